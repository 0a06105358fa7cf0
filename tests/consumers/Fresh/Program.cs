using System.Reflection;
using System.Runtime.Versioning;
using FinishKit;
using FinishKit.Consumers;
using static FinishKit.Measure;

Expect.Same(
    "build of the library in use",
    ".NETCoreApp,Version=v10.0",
    typeof(Arc).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);

// By hand: 1000² / (8 * 25) + 25 / 2 = 5000 + 12.5.
var bow = Arc.FromChordAndRise(Mm(1000), Mm(25));
Expect.Near("radius of 1000 mm with 25 mm under it, mm", 5012.5, bow.Radius!.Value.Millimeters, 1e-6);
Console.WriteLine(bow.Explain());

// By hand: two of 1200 x 600 and a kerf of 2.4 go on the 2430 x 1210 that trimming leaves, and two such rows: four; the fifth takes a second sheet.
var sheets = SheetNesting.Nest(new([new(Mm(1200), Mm(600), 5, mayTurn: false)], [new(Mm(2440), Mm(1220), 40.00m)], SheetCutting.Sawn));
Expect.True("five panels from two sheets, proven", sheets is { Cost: 80m, Proven: true, HasProblem: false });
foreach (var cut in sheets.Sheets[0].Cuts)
{
    Console.WriteLine(cut);
}

// By hand: 700 is more than half of 1370, so three pieces lie one behind the other, 3 x 800; the roll is sold by the half metre.
var cloth = RollCutting.Cut(new([new(Mm(800), Mm(700), 3, mayTurn: false)], Mm(1370)) { SoldBy = Mm(500) });
Expect.Near("cloth to buy, mm", 2500, cloth.LengthToBuy.Millimeters, 1e-6);
return Expect.ExitCode();
