using System.Text.Json;

namespace Stockroom.Tests.Verbs;

/// <summary>The names that scripts rely on, in the one JSON document that a reading verb prints.</summary>
public sealed class JsonShapeTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithDemo();

    public void Dispose() => _keeper.Dispose();

    [Theory]
    [InlineData("today")]
    [InlineData("rounds")]
    public void Today_Json_ListsWhatIsDueAndWrong(string verb)
    {
        var json = _keeper.Run(verb, "--json").Done().Json;
        Has(First(json, "due"), "id", "what", "since", "because", "source");
        Has(First(json, "wrong"), "id", "what", "because", "source");
        Assert.All(json.GetProperty("due").EnumerateArray(), d => IsDay(d.GetProperty("since")));
    }

    [Fact]
    public void List_Json_HasTheMembersOfEveryContainer()
    {
        var containers = _keeper.Run("list", "--json").Done().Json.GetProperty("containers");
        Assert.All(containers.EnumerateArray(), c => Has(c, "id", "content", "net_g", "place"));
        var orphan = containers.EnumerateArray().Single(c => c.GetProperty("orphan").GetBoolean());
        Assert.Equal(JsonValueKind.Null, orphan.GetProperty("net_g").ValueKind);
        Assert.Equal(JsonValueKind.Number, containers[0].GetProperty("net_g").ValueKind);
    }

    [Fact]
    public void Show_Json_IsOneContainerWithDensityAndItsSource()
    {
        var json = _keeper.Run("show", _keeper.IdOf("bromine", "bromine-tray"), "--json").Done().Json;
        Has(json, "id", "content", "net_g", "place", "cover", "cover_mm", "loss_g_per_year", "paths", "wrong", "due", "history");
        Assert.Equal("sulfuric acid 98%", json.GetProperty("cover").GetString());
        Assert.InRange(json.GetProperty("density_g_ml").GetDouble(), 3.0, 3.2); // CRC Handbook: 3.1028 g/mL at 20 C
        Assert.NotEqual("", json.GetProperty("density_source").GetString());
        Assert.Equal(20m * json.GetProperty("density_g_ml").GetDecimal(), json.GetProperty("net_g").GetDecimal());
    }

    [Theory]
    [InlineData("MM451")]
    [InlineData("mm451")]
    [InlineData("mm4-51")]
    [InlineData("STOCKROOM:MM451\ndiisopropyl ether, museum")]
    public void Show_IdAsTypedSpokenOrScanned_FindsTheContainer(string typed) =>
        Assert.Equal("diisopropyl ether", _keeper.Run("show", typed, "--json").Done().Json.GetProperty("content").GetString());

    [Fact]
    public void Places_Json_NamesEachWithWhatItStandsIn()
    {
        var places = _keeper.Run("places", "--json").Done().Json.GetProperty("places").EnumerateArray().ToList();
        Assert.All(places, p => Has(p, "id", "name", "kind", "inside"));
        Assert.Equal(2, places.Count(p => p.GetProperty("inside").ValueKind == JsonValueKind.Null));
        Assert.Equal(_keeper.Run("place", "list", "--json").Done().Out, _keeper.Run("places", "--json").Done().Out);
    }

    [Fact]
    public void Ledger_Json_NumbersTheEntriesFromOne()
    {
        var entries = _keeper.Run("ledger", "--json").Done().Json.GetProperty("entries").EnumerateArray().ToList();
        Assert.All(entries, e => Has(e, "number", "kind", "id", "happened_at", "recorded_at", "by"));
        Assert.Equal(Enumerable.Range(1, entries.Count), entries.Select(e => e.GetProperty("number").GetInt32()));
        Assert.All(entries, e => Assert.True(e.GetProperty("happened_at").GetDateTimeOffset() <= e.GetProperty("recorded_at").GetDateTimeOffset()));
        var own = _keeper.Run("ledger", "MM451", "--json").Done().Json.GetProperty("entries").EnumerateArray();
        Assert.Equal(["received", "opened", "marked"], own.Select(e => e.GetProperty("kind").GetString()));
    }

    [Fact]
    public void Facts_Json_HasTheFieldsOfTheContract()
    {
        var json = _keeper.Run("facts", "bromine", "--json").Done().Json;
        Has(json, "name", "formula", "cas", "molar_mass_g_mol", "state", "melting_c", "boiling_c", "density_g_ml", "vapour_pressure_kpa", "vapour_density_air", "diffusivity_in_air_cm2_s", "exposure_limit", "hazards", "sources");
        Has(json.GetProperty("exposure_limit"), "value_ppm", "value_mg_m3", "kind", "source");
        Assert.Equal("7726-95-6", json.GetProperty("cas").GetString());
        Assert.Equal(159.808, json.GetProperty("molar_mass_g_mol").GetDouble(), 0.01); // IUPAC standard atomic weight of Br, 79.904
        Assert.InRange(json.GetProperty("vapour_pressure_kpa").GetDouble(), 22, 25); // NIST WebBook Antoine (Stull 1947): 23.3 kPa at 20 C
        Assert.Equal(5.52, json.GetProperty("vapour_density_air").GetDouble(), 0.03); // 159.8 / 28.96
    }

    [Fact]
    public void Facts_Unknown_IsNullWithAReasonAndNeverAGuess()
    {
        var json = _keeper.Run("facts", "sucrose", "--json").Done().Json;
        Assert.Equal(JsonValueKind.Null, json.GetProperty("exposure_limit").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("vapour_pressure_kpa").ValueKind);
        Assert.NotEqual("", json.GetProperty("unknown").GetProperty("vapour_pressure_kpa").GetString());
    }

    [Fact]
    public void Pair_Json_HasTheFieldsOfTheContract()
    {
        var json = _keeper.Run("pair", "nitric acid 65%", "acetone", "--json").Done().Json;
        Has(json, "separation", "never_above", "vapour", "contact", "class_table");
        Assert.Contains(json.GetProperty("separation").GetString(), new[] { "own cabinet", "far apart" }); // oxidising acid over a flammable liquid: fire
        var reason = First(json.GetProperty("contact"), "reasons");
        Has(reason, "families", "would", "product", "source");
        Assert.Equal(2, reason.GetProperty("families").GetArrayLength());
    }

    // 49 CFR 177.848(d): 3 against 5.1 is O; IMDG 7.2.4: 2; the cell of storage classes 3 and 5.1B was not read.
    [Theory]
    [InlineData("road", "O", "3", "5.1", "own tray")]
    [InlineData("sea", "2", "3", "5.1", "own cabinet")]
    [InlineData("storage", null, "3", "5.1B", null)]
    public void Pair_WithATable_GivesItsCodeClassesAndClause(string table, string? code, string a, string b, string? separation)
    {
        var json = _keeper.Run("pair", "acetone", "potassium permanganate", "--table", table, "--json").Done().Json;
        var said = json.GetProperty("class_table");
        Has(said, "table", "classes", "code", "meaning", "clause");
        Assert.Equal(table, said.GetProperty("table").GetString());
        Assert.Equal(code, said.GetProperty("code").GetString());
        Assert.Equal(separation, said.GetProperty("separation").GetString());
        Assert.Equal([a, b], said.GetProperty("classes").EnumerateArray().Select(c => c.GetString()));
        Assert.Equal("own cabinet", json.GetProperty("separation").GetString());
        Assert.Contains("analogy", said.GetProperty("analogy").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Pair_WithoutATable_HasNone()
    {
        foreach (var words in (string[][])[["pair", "acetone", "ethanol", "--json"], ["pair", "acetone", "ethanol", "--table", "none", "--json"]])
            Assert.Equal(JsonValueKind.Null, _keeper.Run(words).Done().Json.GetProperty("class_table").ValueKind);
    }

    // Sodium hydroxide and an oxidiser: class 8 and 5.1, which only the sea table sets apart.
    [Fact]
    public void PlaceTable_ChosenForTheBook_CountsUntilAnotherIsAskedFor()
    {
        string Of(params string[] more) => _keeper.Run(["pair", "sodium hydroxide", "potassium nitrate", "--json", .. more]).Done().Json.GetProperty("separation").GetString()!;
        var before = _keeper.Run("neighbours", "--json").Json.GetProperty("findings").GetArrayLength();
        Assert.Equal("same tray", Of());
        _keeper.Run("place", "table", "sea").Done();
        Assert.Equal("own cabinet", Of());
        Assert.Equal("same tray", Of("--table", "none"));
        Assert.True(_keeper.Run("neighbours", "--json").Json.GetProperty("findings").GetArrayLength() > before);
        Assert.Equal(before, _keeper.Run("neighbours", "--table", "none", "--json").Json.GetProperty("findings").GetArrayLength());
        Assert.Contains("class table chosen: sea", _keeper.Run("ledger").Done().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Neighbours_WhatStandsWrongByItself_IsAFindingWithoutPairs()
    {
        _keeper.Run("place", "limit", "salts-upper", "--max-containers", "2").Done();
        var json = _keeper.Run("neighbours", "--place", "salts-upper", "--json").Json;
        var found = json.GetProperty("findings").EnumerateArray().Single(f => f.GetProperty("pairs").GetArrayLength() == 0);
        Assert.StartsWith("Upper salts shelf holds 5 containers", found.GetProperty("cause").GetString(), StringComparison.Ordinal);
        Assert.Equal("salts-upper", found.GetProperty("place").GetString());
        Assert.Contains(_keeper.Run("today", "--json").Done().Json.GetProperty("wrong").EnumerateArray(), w => w.GetProperty("what").GetString()!.Contains("upper salts shelf", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Neighbours_ByAir_SaysWhoBreathesAndHowMuch()
    {
        var pairs = _keeper.Run("neighbours", "--json").Json.GetProperty("findings").EnumerateArray()
            .Single(f => f.GetProperty("vapour").GetBoolean()).GetProperty("pairs").EnumerateArray().Where(p => p.TryGetProperty("breathes", out _)).ToList();
        Assert.Equal(2, pairs.Count); // hydrochloric and nitric acid; sulfuric and phosphoric acid have no breath that reaches ammonia
        Assert.All(pairs, p => Assert.True(p.GetProperty("breathes_g_per_year").GetProperty("expected").GetDouble() > 0));
    }

    [Fact]
    public void Places_Json_SaysWhatIsKnownOfAPlace()
    {
        _keeper.Run("place", "limit", "salts", "--wooden", "true", "--max-flammable", "0.5", "--air-changes", "3").Done();
        var shelf = _keeper.Run("places", "--json").Done().Json.GetProperty("places").EnumerateArray().Single(p => p.GetProperty("id").GetString() == "salts");
        Assert.True(shelf.GetProperty("wooden").GetBoolean());
        Assert.Equal(0.5m, shelf.GetProperty("max_flammable_l").GetDecimal());
        Assert.Equal(3m, shelf.GetProperty("air_changes_per_h").GetDecimal());
        Assert.Equal(JsonValueKind.Null, shelf.GetProperty("near_heat").ValueKind);
    }

    [Fact]
    public void Neighbours_Json_ListsFindingsAndExitsOne()
    {
        var answer = _keeper.Run("neighbours", "--json");
        Assert.Equal(1, answer.Code);
        Assert.Empty(answer.Error);
        var finding = First(answer.Json, "findings");
        Has(finding, "cause", "would", "source", "separation", "pairs");
        Has(First(finding, "pairs"), "a", "b", "stand");
        var nothing = _keeper.Run("neighbours", "--place", "alkali", "--json").Done().Json;
        Assert.Equal(0, nothing.GetProperty("findings").GetArrayLength());
    }

    [Theory]
    [InlineData("forecast", "MM451", "--json")]
    [InlineData("forecast", "--content", "bromine", "--amount", "20 mL", "--vessel", "glass reagent bottle 100 mL", "--closure", "plain polypropylene screw cap", "--cover", "sulfuric acid 98%:10 mm", "--temperature", "19", "--swing", "4", "--json")]
    public void Forecast_Json_HasTheFieldsOfTheContract(params string[] typed)
    {
        var json = _keeper.Run(typed).Done().Json;
        Has(json, "loss_g_per_year", "paths", "remaining_g", "reaches", "air", "warnings");
        Has(json.GetProperty("loss_g_per_year"), "low", "expected", "high");
        Has(json.GetProperty("remaining_g"), "low", "expected", "high");
        Has(json.GetProperty("air"), "ppm", "limit_ppm", "share_of_limit", "share_of_lower_flammable_limit");
        Has(First(json, "paths"), "path", "share", "g_per_year", "because", "source");
        Assert.All(json.GetProperty("reaches").EnumerateArray(), r => Has(r, "limit", "low", "expected", "high"));
        var loss = json.GetProperty("loss_g_per_year");
        Assert.InRange(loss.GetProperty("expected").GetDouble(), loss.GetProperty("low").GetDouble(), loss.GetProperty("high").GetDouble());
    }

    [Fact]
    public void Forecast_OnALaterDay_LeavesLess()
    {
        double Left(string day) => _keeper.Run("forecast", "MM451", "--on", day, "--json").Done().Json.GetProperty("remaining_g").GetProperty("expected").GetDouble();
        Assert.True(Left("2030-01-01") < Left("2027-01-01"));
    }

    // The planted bottle: 51 g a year by four weighings, where its stopper should let go two.
    [Fact]
    public void Forecast_OfAWeighedBottle_FollowsTheWeighings()
    {
        var json = _keeper.Run("forecast", _keeper.IdOf("n-hexane"), "--json").Done().Json;
        Has(json, "weighings", "prior_g_per_year", "alarm", "measured");
        Has(json.GetProperty("measured"), "g_per_year", "weighings", "from", "to", "verdict", "because", "followed");
        Assert.InRange(json.GetProperty("loss_g_per_year").GetProperty("expected").GetDouble(), 45, 57);
        Assert.InRange(json.GetProperty("prior_g_per_year").GetProperty("expected").GetDouble(), 1, 5);
        Assert.Equal("failing", json.GetProperty("measured").GetProperty("verdict").GetString());
        Assert.Contains("fails", json.GetProperty("alarm").GetString(), StringComparison.Ordinal);
        var unweighed = _keeper.Run("forecast", "MM451", "--json").Done().Json;
        Assert.All((string[])["weighings", "prior_g_per_year", "alarm", "measured"], n => Assert.Equal(JsonValueKind.Null, unweighed.GetProperty(n).ValueKind));
    }

    [Fact]
    public void Stocks_Json_GivesSizes()
    {
        var stocks = _keeper.Run("stocks", "--json").Done().Json.GetProperty("stocks").EnumerateArray().ToList();
        Assert.All(stocks, s => Has(s, "name", "width_mm", "height_mm", "per_sheet"));
        Assert.Contains("a4-2x4", stocks.Select(s => s.GetProperty("name").GetString()));
    }

    [Theory]
    [InlineData("vessels", "glass ampoule 10 mL")]
    [InlineData("closures", "flame seal")]
    [InlineData("covers", "paraffin oil")]
    public void Wares_Json_NameWhatCanBeNamed(string verb, string name)
    {
        var wares = _keeper.Run(verb, "--json").Done().Json.GetProperty(verb).EnumerateArray();
        Assert.Contains(name, wares.Select(w => w.GetProperty("name").GetString()));
    }

    [Fact]
    public void Verify_Json_SaysThatAllHolds()
    {
        var json = _keeper.Run("verify", "--json").Done().Json;
        Assert.True(json.GetProperty("holds").GetBoolean());
        Assert.Equal(0, json.GetProperty("findings").GetArrayLength());
        Assert.Equal(64, json.GetProperty("head").GetString()!.Length); // SHA-256 in hexadecimal
    }

    // Without --json the same verbs print plain lines: label before value, no boxes, nothing wider than a sentence.
    [Theory]
    [InlineData("today", 0)]
    [InlineData("rounds", 0)]
    [InlineData("list", 0)]
    [InlineData("show MM451", 0)]
    [InlineData("places", 0)]
    [InlineData("ledger", 0)]
    [InlineData("facts bromine", 0)]
    [InlineData("pair bromine acetone", 0)]
    [InlineData("neighbours", 1)]
    [InlineData("forecast MM451 --explain", 0)]
    [InlineData("stocks", 0)]
    [InlineData("verify", 0)]
    public void Verb_WithoutJson_PrintsPlainLines(string typed, int code)
    {
        var answer = _keeper.Run(typed.Split(' '));
        Assert.Equal(code, answer.Code);
        Assert.Empty(answer.Error);
        Assert.NotEmpty(answer.OutLines);
        Assert.DoesNotContain(answer.Out, c => c is '{' or '|' or (>= '\u2500' and <= '\u257f') || (char.IsControl(c) && c != '\n'));
    }

    private static JsonElement First(JsonElement json, string list)
    {
        Assert.True(json.GetProperty(list).GetArrayLength() > 0, list + " is empty");
        return json.GetProperty(list)[0];
    }

    private static void Has(JsonElement json, params string[] names) =>
        Assert.All(names, n => Assert.True(json.TryGetProperty(n, out _), $"no '{n}' in {json.GetRawText()[..Math.Min(200, json.GetRawText().Length)]}"));

    private static void IsDay(JsonElement json) => Assert.Matches(@"^\d{4}-\d{2}-\d{2}$", json.GetString());
}
