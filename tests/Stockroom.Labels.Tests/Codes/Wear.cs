namespace Stockroom.Labels.Tests.Codes;

/// <summary>Grey pixels of a code, and what time and glass do to it.</summary>
internal sealed record Wear(byte[] Grey, int Width, int Height)
{
    /// <summary>Gaussian blur whose standard deviation is so many pixels.</summary>
    public Wear Blurred(double sigma)
    {
        var reach = (int)Math.Ceiling(3 * sigma);
        var kernel = Enumerable.Range(-reach, (2 * reach) + 1).Select(i => Math.Exp(-i * i / (2 * sigma * sigma))).ToArray();
        var sum = kernel.Sum();
        return Pass(Pass(this, 1, 0), 0, 1);

        Wear Pass(Wear source, int dx, int dy)
        {
            var to = new byte[source.Grey.Length];
            for (var y = 0; y < source.Height; y++)
            {
                for (var x = 0; x < source.Width; x++)
                {
                    var value = 0.0;
                    for (var i = -reach; i <= reach; i++)
                    {
                        var (px, py) = (Math.Clamp(x + (i * dx), 0, source.Width - 1), Math.Clamp(y + (i * dy), 0, source.Height - 1));
                        value += kernel[i + reach] * source.Grey[(py * source.Width) + px];
                    }

                    to[(y * source.Width) + x] = (byte)Math.Round(value / sum);
                }
            }

            return source with { Grey = to };
        }
    }

    /// <summary>A round stain over a share of the code's own area, black or white, anywhere on it.</summary>
    public (Wear Wear, double X, double Y, double Radius) Stained(double share, double left, double top, double edge, Random random)
    {
        var radius = Math.Sqrt(share / Math.PI) * edge;
        var (cx, cy) = (left + radius + (random.NextDouble() * (edge - (2 * radius))), top + radius + (random.NextDouble() * (edge - (2 * radius))));
        var ink = random.Next(2) == 0 ? (byte)0 : (byte)255;
        var to = (byte[])Grey.Clone();
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                if (Math.Pow(x - cx, 2) + Math.Pow(y - cy, 2) <= radius * radius)
                {
                    to[(y * Width) + x] = ink;
                }
            }
        }

        return (this with { Grey = to }, cx, cy, radius);
    }

    /// <summary>As seen from in front when wrapped round a cylinder: a point at arc s from the middle stands at r sin(s / r).</summary>
    public Wear Wrapped(double diameterPixels)
    {
        var radius = diameterPixels / 2;
        var half = Math.Min(Width / 2.0, radius * Math.PI / 2 * 0.98);
        var seen = (int)Math.Floor(2 * radius * Math.Sin(half / radius));
        var to = new byte[seen * Height];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < seen; x++)
            {
                var arc = radius * Math.Asin((x + 0.5 - (seen / 2.0)) / radius);
                var at = Math.Clamp((int)Math.Floor(arc + (Width / 2.0)), 0, Width - 1);
                to[(y * seen) + x] = Grey[(y * Width) + at];
            }
        }

        return new Wear(to, seen, Height);
    }
}
