using Stockroom.Assessment.Intake;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Verbs;

/// <summary>
/// What a receipt is corrected to is looked up as it would be on the way in: a name that nothing is known of would be booked
/// as if something were.
/// </summary>
internal static class CorrectedWords
{
    /// <summary>The change with its value as the catalogue writes it.</summary>
    /// <exception cref="Book.BookRefusal">The value is not known, in one line that offers the nearest.</exception>
    public static FieldChange Checked(FieldChange change, long number, Ledger ledger)
    {
        if (change.Value is not { } value || number < 1 || number > ledger.Entries.Count || ledger.Entries[(int)number - 1] is not Received receipt)
            return change;
        var state = ledger.State;
        var desk = new IntakeDesk(PropertyFacts.Default, WareCatalogue.Default, state.OwnSubstances.Count > 0 ? state.Catalogue() : null);
        return change with { Value = desk.Corrected(receipt, change.Field, value) };
    }
}
