namespace Stockroom.Views;

/// <summary>One container as a line of the holdings list.</summary>
/// <param name="Id">Container id.</param>
/// <param name="Content">Its name, or what is seen on an orphan.</param>
/// <param name="Amount">Such as "62.1 g" or "unknown".</param>
/// <param name="Place">Full path such as "prep room > acid cabinet > lower shelf".</param>
/// <param name="Sign">A one-letter sign for the list: "!" the one to act on where something is wrong, "*" due, "-" hands off, or a space.</param>
/// <param name="LossPerYear">Such as "4.5 g (0.4-45)"; "none" where nothing leaves; "unknown".</param>
/// <param name="SearchText">Lower-case text that filtering looks in: id, content, synonyms, formula, place, hazards.</param>
public sealed record HoldingRow(string Id, string Content, string Amount, string Place, string Sign, string LossPerYear, string SearchText);
