using System.Text.Json;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>A damaged book is shown as far as it holds, and never without saying so.</summary>
internal static class DamageWords
{
    /// <summary>The member that says what does not hold; null where everything does.</summary>
    public static void Damage(this Utf8JsonWriter json, StockBook book) => json.Damage(book.Damage);

    /// <summary>The same of a book that is closed again, or of none.</summary>
    public static void Damage(this Utf8JsonWriter json, IReadOnlyList<string> damage)
    {
        if (damage.Count == 0)
            json.WriteNull("damage");
        else
            json.Texts("damage", damage);
    }

    /// <summary>The same above plain lines.</summary>
    public static void Mark(TextWriter to, StockBook book) => Mark(to, book.Damage);

    /// <summary>The same of a book that is closed again, or of none.</summary>
    public static void Mark(TextWriter to, IReadOnlyList<string> damage)
    {
        if (damage.Count > 0)
            to.WriteLine("DAMAGED BOOK: what follows is what still holds of it, and may not be all");
    }
}
