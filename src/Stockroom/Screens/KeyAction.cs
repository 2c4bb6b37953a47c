using Terminal.Gui.Input;

namespace Stockroom.Screens;

/// <summary>A key with what it does: the key line, the key sheet and the deed itself all come from this one declaration.</summary>
/// <param name="Name">The key as it is printed on a keyboard, such as "Enter".</param>
/// <param name="Help">What it does, as a phrase for the key sheet.</param>
/// <param name="Do">Does it.</param>
/// <param name="Keys">The keys that do it; any of them.</param>
internal sealed record KeyAction(string Name, string Help, Action Do, params Key[] Keys)
{
    /// <summary>A word or two for the key line; null where the key sheet is enough.</summary>
    public string? Brief { get; init; }

    /// <summary>Why the key does nothing just now; null where it works.</summary>
    public Func<string?> Hindrance { get; init; } = static () => null;

    public bool Works => Hindrance() is null;

    public bool IsFor(Key key) => Keys.Any(k => k == key);
}
