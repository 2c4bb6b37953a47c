namespace Stockroom.Imports;

/// <summary>A field that a column of an import can stand for.</summary>
/// <param name="Name">As --map names it, and as export writes it.</param>
/// <param name="Headers">Other headers by which it is recognised, in plain lower-case letters and digits.</param>
internal sealed record ImportField(string Name, params string[] Headers)
{
    /// <summary>Fields of a container. Those last in the list are written by export and worked out anew, never taken from a file.</summary>
    public static IReadOnlyList<ImportField> OfContainers { get; } =
    [
        new("id", "container", "containerid", "containerno", "label", "code"),
        new("content", "contents", "substance", "chemical", "name", "material", "compound", "reagent", "product"),
        new("orphan", "unknown"),
        new("net_g", "net", "netmass", "netweight"),
        new("quantity", "amount", "qty", "volume", "mass", "weight", "size"),
        new("place", "location", "where", "storedin", "standsin", "shelf", "storage"),
        new("place_path"),
        new("place_steps"),
        new("vessel", "bottle", "containertype", "vesseltype"),
        new("closure", "cap", "lid", "stopper", "closedwith"),
        new("cover", "coveredwith", "under"),
        new("cover_mm", "coverdepth", "coverdepthmm", "depthmm"),
        new("cover_since", "coveredon"),
        new("cover_on", "covermeasuredon"),
        new("packing", "outerpacking"),
        new("received", "date", "datereceived", "receivedon", "acquired", "acquiredon", "bought", "boughton", "purchased", "purchasedon", "dateofpurchase", "arrived", "in", "came"),
        new("opened", "dateopened", "openedon"),
        new("sealed", "datesealed", "sealedon"),
        new("sealed_at_c"),
        new("sealed_pressure_bar"),
        new("hands_off", "donottouch"),
        new("pinned"),
        new("least_strength_percent", "leaststrength", "minimumstrength", "minstrength"),
        new("lot", "how", "lothow"),
        new("origin", "from", "source", "camefrom"),
        new("supplier", "vendor", "maker", "manufacturer", "brand"),
        new("batch", "lotno", "lotnumber", "batchno", "batchnumber"),
        new("split_from", "parent"),
        new("made", "madeon", "datemade", "filled"),
        new("lot_note"),
        new("composition", "mix", "mixture", "parts"),
        new("state", "phase"),
        new("seen", "whatisseen"),
        new("found_by", "finder"),
        new("density_g_ml", "density"),
        new("density_source"),
        new("tare_g", "tare"),
        new("gross_g", "gross", "grossmass", "grossweight"),
        new("label_printed"),
        new("note", "notes", "remark", "remarks", "comment", "comments"),
        new("signal_word"),
        new("hazard_statements"),
    ];

    /// <summary>Fields of a place.</summary>
    public static IReadOnlyList<ImportField> OfPlaces { get; } =
    [
        new("id", "place", "placeid"),
        new("name", "placename"),
        new("kind", "placekind", "type", "sort"),
        new("inside", "in", "standsin", "within"),
        new("order", "position"),
        new("height_m", "height"),
        new("leak_tight", "leaktight", "tray"),
        new("mean_c", "meantemperature", "temperature"),
        new("min_c", "mintemperature"),
        new("max_c", "maxtemperature"),
        new("daily_swing_k", "dailyswing", "swing"),
        new("max_load_kg", "maxload"),
        new("max_containers"),
        new("seasonal_swing_k", "seasonalswing"),
        new("warmest_month"),
        new("light"),
        new("max_l", "maxvolume"),
        new("max_flammable_l", "maxflammable"),
        new("air_changes_per_h", "airchanges"),
        new("door"),
        new("locked"),
        new("wooden"),
        new("near_heat"),
        new("for_flammables"),
        new("note", "notes", "remark", "remarks", "comment", "comments"),
    ];

    /// <summary>True where a header is this field's name or one of its other headers, whatever the case, blanks and signs in it.</summary>
    public bool IsCalled(string header)
    {
        var plain = Plain(header);
        return plain == Plain(Name) || Headers.Contains(plain);
    }

    /// <summary>Letters and digits only, in lower case.</summary>
    public static string Plain(string header) => string.Concat(header.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
