using System.CommandLine;

namespace Stockroom.Verbs;

internal sealed class PlacesVerb : IVerb
{
    public string Name => "places";

    public string Summary => "The places as a tree, with what stands in them";

    public Command Build(Surroundings around) => PlaceVerb.BuildList(around, Name, Summary);
}
