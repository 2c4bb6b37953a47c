using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Book.Containers;

/// <summary>What a container holds, in the catalogue's terms.</summary>
public static class ContainerContent
{
    /// <summary>An orphan's content is unknown; a home-made mixture's comes from its booked parts; any other from the catalogue by name.</summary>
    public static Resolution ContentIn(this Container container, SubstanceCatalogue catalogue)
    {
        if (container.IsOrphan)
            return Resolution.Found(Content.Orphan(container.ContentName, container.State ?? MatterState.Unknown));
        if (container.Parts is not { } shares)
            return catalogue.Resolve(container.ContentName);

        var parts = new List<Part>();
        foreach (var share in shares)
        {
            if (catalogue.ResolveSubstance(share.Substance) is not { } substance)
                return Resolution.Miss($"{container.Id}: '{share.Substance}', a part of '{container.ContentName}', is not in the catalogue", []);
            parts.Add(new Part(substance, share.Percent));
        }

        return Resolution.Found(new Content
        {
            Name = container.ContentName,
            State = container.State ?? MatterState.Unknown,
            Parts = parts,
            Density = container.Density is { } density ? Density.FromGramsPerMillilitre((double)density.GramsPerMillilitre) : null,
        });
    }
}
