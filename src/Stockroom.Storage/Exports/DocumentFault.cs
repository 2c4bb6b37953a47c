namespace Stockroom.Storage.Exports;

/// <summary>What is wrong with an imported document, and on which of its lines (from 1).</summary>
public sealed record DocumentFault(int Line, string Because);

/// <summary>A document cannot be imported; every fault that was found is named with its line.</summary>
public sealed class DocumentException : Exception
{
    public DocumentException(IReadOnlyList<DocumentFault> faults)
        : base(faults.Count == 0 ? "" : $"line {faults[0].Line}: {faults[0].Because}") => Faults = faults;

    public DocumentException(int line, string because)
        : this([new DocumentFault(line, because)])
    {
    }

    public IReadOnlyList<DocumentFault> Faults { get; }
}
