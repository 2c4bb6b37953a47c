namespace Stockroom.Book.Containers;

/// <summary>A file kept with a container: a photograph, a scanned sheet, a certificate.</summary>
/// <param name="Entry">Number of the entry that names it.</param>
/// <param name="On">The day it was attached.</param>
/// <param name="Name">File name as given, without folders.</param>
/// <param name="Sha256">Hash of its content, 64 lower-case hexadecimal digits; the content is kept under it.</param>
/// <param name="Bytes">Length of its content.</param>
/// <param name="MediaType">Such as image/jpeg, told from the content or the name.</param>
/// <param name="Note">What the keeper said of it.</param>
public sealed record Attachment(long Entry, DateOnly On, string Name, string Sha256, long Bytes, string MediaType, string? Note);
