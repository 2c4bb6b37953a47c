using Terminal.Gui.Input;

namespace Stockroom.Screens.Shell;

/// <summary>Finds the action for a key among several lists, the first list first.</summary>
internal static class KeyRing
{
    /// <summary>
    /// Does what the key is for. Where every action of that key is hindered, gives the reason of the first.
    /// </summary>
    /// <param name="why">The reason why nothing was done; null where something was.</param>
    /// <returns>False where no action is for this key.</returns>
    public static bool TryPress(Key key, IEnumerable<KeyAction> actions, out string? why)
    {
        why = null;
        bool known = false;
        foreach (KeyAction action in actions.Where(a => a.IsFor(key)))
        {
            string? hindrance = action.Hindrance();
            if (hindrance is null)
            {
                why = null;
                action.Do();
                return true;
            }

            if (!known) why = $"{action.Name} does nothing now: {hindrance}";
            known = true;
        }

        return known;
    }
}
