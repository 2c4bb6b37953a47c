using System.Text.Json;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>A damaged book is shown as far as it holds, and never without saying so.</summary>
internal static class DamageWords
{
    /// <summary>The member that says what does not hold; null where everything does.</summary>
    public static void Damage(this Utf8JsonWriter json, StockBook book)
    {
        if (book.Damage.Count == 0)
            json.WriteNull("damage");
        else
            json.Texts("damage", book.Damage);
    }

    /// <summary>The same above plain lines.</summary>
    public static void Mark(TextWriter to, StockBook book)
    {
        if (book.Damage.Count > 0)
            to.WriteLine("DAMAGED BOOK: what follows is what still holds of it, and may not be all");
    }
}
