using System;
using FinishKit;
using UnitsNet;

namespace FinishKit.Consumers.Middle
{
    /// <summary>As <see cref="Bands"/>, for panels: every input type of theirs in an object initialiser with all that it has.</summary>
    public static class PanelBands
    {
        /// <summary>Cost of three triangles of which an offcut gives one, and two go side by side on a sheet.</summary>
        public static decimal Triangles(double side, double kerf, decimal price)
        {
            NestingJob job = new NestingJob
            {
                Parts = new[]
                {
                    new SheetPart
                    {
                        Length = Measure.Mm(side),
                        Width = Measure.Mm(side),
                        Count = 3,
                        MayTurn = true,
                        Name = "gusset",
                        Outline = new[] { new MeasuredPoint(Measure.Mm(0), Measure.Mm(0)), new MeasuredPoint(Measure.Mm(side), Measure.Mm(0)), new MeasuredPoint(Measure.Mm(0), Measure.Mm(side)) },
                    },
                },
                Stock = new[] { new StockSheet { Length = Measure.Mm((2 * side) + kerf), Width = Measure.Mm(side), Price = price, Available = 5 } },
                Cutting = SheetCutting.Sawn,
                Offcuts = new[] { new SheetOffcut { Length = Measure.Mm(side), Width = Measure.Mm(side), Count = 1 } },
                Kerf = Measure.Mm(kerf),
                Trim = Measure.Mm(0),
                LeastOffcutLength = Measure.Mm(300),
                LeastOffcutWidth = Measure.Mm(100),
                Effort = 100_000,
            };
            return SheetNesting.Nest(job).Cost;
        }

        /// <summary>Roll to buy in millimetres for three pieces that never lie side by side.</summary>
        public static double RollInMillimetres(double along, double across, double width, double soldBy)
        {
            RollJob job = new RollJob
            {
                Parts = new[] { new RollPart { Along = Measure.Mm(along), Across = Measure.Mm(across), Count = 3, MayTurn = false, Name = "ceiling" } },
                Width = Measure.Mm(width),
                Selvedge = Measure.Mm(10),
                Between = Measure.Mm(2),
                SoldBy = Measure.Mm(soldBy),
                Effort = 100_000,
            };
            return RollCutting.Cut(job).LengthToBuy.Millimeters;
        }

        /// <summary>Ply of the first of three panels in millimetres, the foam round its front edge.</summary>
        public static double FirstPlyInMillimetres(double opening, double height)
        {
            return Row(opening, height, EdgeWrap.FoamRound).Panels[0].PlyWidth.Millimeters;
        }

        /// <summary>How far into the repeat the cloth of the first of three panels starts, the pattern centred on that panel.</summary>
        public static double PatternInMillimetres(double opening, double height, double repeat)
        {
            PatternJob job = new PatternJob
            {
                Plan = Row(opening, height, EdgeWrap.FoamTrimmed),
                RepeatAlong = Measure.Mm(320),
                RepeatAcross = Measure.Mm(repeat),
                CentredOnPanel = 0,
                RollWidth = Measure.Mm(1400),
            };
            return PatternMatch.Lay(job).Pieces[0].OffsetAcross.Millimeters;
        }

        /// <summary>Mass in kilograms of the front panel of a wall with a window and ribs.</summary>
        public static double FrontPanelInKilograms(double rib)
        {
            PanelWall wall = new PanelWall
            {
                Length = Measure.Mm(3400),
                Girth = Measure.Mm(800),
                SheetLength = Measure.Mm(2440),
                SheetWidth = Measure.Mm(1220),
                Grain = PanelGrainDirection.AlongU,
                Openings = new[] { new FaceOpening(Measure.Mm(500), Measure.Mm(1400), Measure.Mm(230), Measure.Mm(610)) },
                Ribs = new[] { new PanelJointLine { Position = Measure.Mm(950), MetalWidth = Measure.Mm(60) }, new PanelJointLine { Position = Measure.Mm(rib), MetalWidth = Measure.Mm(60), MustSplit = true } },
                Rails = new PanelJointLine[0],
                Reveal = Measure.Mm(2),
                Landing = Measure.Mm(15),
                CornerDistance = Measure.Mm(50),
                LeastPanel = Measure.Mm(150),
                MostLength = Measure.Mm(2000),
                SquareMetreMass = Mass.FromKilograms(6),
                MostMass = Mass.FromKilograms(10),
            };
            return PanelSplit.Split(wall).Panels[0].Mass.Value.Kilograms;
        }

        /// <summary>Newtons on the hardest-worked fixing of two rows that share a hung mass.</summary>
        public static double FixingInNewtons(double width, double kilograms)
        {
            PanelFixingJob job = new PanelFixingJob
            {
                Rows = new[]
                {
                    new PanelRow { Position = Measure.Mm(0), Pull = ForcePerLength.FromNewtonsPerMillimeter(0) },
                    new PanelRow { Position = Measure.Mm(400), Pull = ForcePerLength.FromNewtonsPerMillimeter(0) },
                },
                Width = Measure.Mm(width),
                Hold = Force.FromNewtons(100),
                Girth = Measure.Mm(400),
                HungMass = Mass.FromKilograms(kilograms),
                Acceleration = 1,
                EdgeDistance = Measure.Mm(50),
                GreatestSpacing = Measure.Mm(500),
            };
            return PanelFixings.Place(job).Rows[0].GreatestLoad.Newtons;
        }

        /// <summary>Stiffness in megapascals of three equal plies, those across counted.</summary>
        public static double ThreePlyInMegapascals(double elasticity, double crossRatio)
        {
            Veneer face = new Veneer { Thickness = Measure.Mm(1.5), Direction = PlyDirection.Along, Elasticity = Pressure.FromMegapascals(elasticity), BendingStrength = Pressure.FromMegapascals(60) };
            PlyLayUp layUp = new PlyLayUp
            {
                Veneers = new[] { face, new Veneer { Thickness = Measure.Mm(1.5), Direction = PlyDirection.Across }, face },
                Elasticity = Pressure.FromMegapascals(elasticity),
                BendingStrength = Pressure.FromMegapascals(60),
                StrengthBasis = PlywoodStrengthBasis.Characteristic,
                CrossRatio = crossRatio,
                CrossStrength = Pressure.FromMegapascals(2),
            };
            return LayeredPly.InBending(layUp).ElasticityAlong.Megapascals;
        }

        /// <summary>Kerfs of a quarter turn.</summary>
        public static int KerfsOf(double radius, double thickness, double web, double kerf)
        {
            KerfedPanel panel = new KerfedPanel
            {
                OuterRadius = Measure.Mm(radius),
                Bend = Angle.FromDegrees(90),
                Thickness = Measure.Mm(thickness),
                Web = Measure.Mm(web),
                Kerf = Measure.Mm(kerf),
                DepthError = Measure.Mm(0.2),
                WebSheet = Sheet(web),
            };
            return KerfBend.Plan(panel).Kerfs;
        }

        /// <summary>Form in millimetres for three equal layers.</summary>
        public static double FormInMillimetres(double radius)
        {
            LaminatedBend bend = new LaminatedBend { Layers = new[] { Sheet(3), Sheet(3), Sheet(3) }, Radius = Measure.Mm(radius), StretchRatio = 1 };
            return Lamination.ToRadius(bend).FormRadius.Value.Millimeters;
        }

        /// <summary>Mass of two layers over that of one sheet.</summary>
        public static double LayersMass(double layer, double sheet)
        {
            LayersOrSheet choice = new LayersOrSheet
            {
                Layer = Sheet(layer),
                Layers = 2,
                Sheet = Sheet(sheet),
                WallRadius = Measure.Mm(2500),
                Rows = new[] { Measure.Mm(0), Measure.Mm(200), Measure.Mm(400) },
                StretchRatio = 1,
                Density = Density.FromKilogramsPerCubicMeter(650),
            };
            return Lamination.Compare(choice).MassRatio;
        }

        /// <summary>Share of what a sheet takes on two curves.</summary>
        public static double ShareOnBowl(double around, double along, double shorter)
        {
            return DoubleCurvature.Judge(new BowedPanel { Sheet = Sheet(6), Around = Measure.Mm(around), Along = Measure.Mm(along), Girth = Measure.Mm(shorter), Width = Measure.Mm(3000) }).Share;
        }

        /// <summary>Newtons for good of a screw in metal of known strength.</summary>
        public static double ScrewInNewtons(double metal, double strength)
        {
            MetalScrewJob job = new MetalScrewJob
            {
                Layers = new Layer[] { Measure.Mm(6.5) },
                Metal = Measure.Mm(metal),
                Behind = Behind.Skin(Measure.Mm(35)),
                Screws = new FastenerSeries("tapping screw 4.2", FastenerKind.WoodScrew, Measure.Mm(4.2), new[] { Measure.Mm(16), Measure.Mm(19) }),
                Pitch = Measure.Mm(1.4),
                SetDepth = Measure.Mm(0.5),
                ThreadsBeyond = 3,
                Point = Measure.Mm(4.2),
                RequiredClearance = Measure.Mm(5),
                MetalStrength = Pressure.FromMegapascals(strength),
                HeadHold = Force.FromNewtons(1000),
                PilotHole = Measure.Mm(3.5),
            };
            return MetalScrew.Choose(job).Hold.Value.Newtons;
        }

        /// <summary>What a rivet nut clamps in millimetres.</summary>
        public static double GripInMillimetres(double metal, double paint, double bracket)
        {
            RivetNutJob job = new RivetNutJob
            {
                Layers = new Layer[] { Measure.Mm(6.5) },
                Metal = Measure.Mm(metal),
                Behind = Behind.Skin(Measure.Mm(30)),
                Nut = new RivetNutSize("round M5", Measure.Mm(5), Measure.Mm(7), Measure.Mm(0.5), Measure.Mm(3)),
                ThreadFrom = Measure.Mm(5),
                ThreadTo = Measure.Mm(12),
                Screws = new[] { Measure.Mm(20) },
                Paint = Measure.Mm(paint),
                MatingSheet = Measure.Mm(bracket),
                Flange = Measure.Mm(1),
                UnsetDepth = Measure.Mm(15),
                SetDepth = Measure.Mm(0.5),
                LengthTolerance = Measure.Mm(0.5),
                Engagement = 1,
                RequiredClearance = Measure.Mm(5),
                NutHold = Force.FromNewtons(500),
            };
            return RivetNut.Fit(job).Grip.Millimeters;
        }

        /// <summary>Staples along one edge.</summary>
        public static int StaplesAlong(double edge, double spacing)
        {
            StapleJob job = new StapleJob
            {
                Edges = new[] { Measure.Mm(edge) },
                PlyThickness = TolerancedLength.PlusMinus(Measure.Mm(6.5), Measure.Mm(0.4)),
                Leg = Measure.Mm(5),
                UnderCrown = Measure.Mm(1),
                Spacing = Measure.Mm(spacing),
                Margin = Measure.Mm(1),
                LeastBite = Measure.Mm(3),
            };
            return PanelStaples.SetOut(job).Count;
        }

        /// <summary>Money an hour at which foam-backed cloth costs as much as separate foam.</summary>
        public static decimal? BreakEven(decimal backed, decimal separate)
        {
            WrapChoice choice = new WrapChoice
            {
                BackedArea = Area.FromSquareMeters(8),
                BackedPrice = backed,
                ClothArea = Area.FromSquareMeters(8),
                ClothPrice = separate,
                FoamArea = Area.FromSquareMeters(7),
                FoamPrice = 6m,
                BackedExtras = 1m,
                SeparateExtras = 15m,
                Panels = 9,
                BackedHours = TimeSpan.FromHours(6),
                SeparateHours = TimeSpan.FromHours(9),
            };
            return WrapComparison.Compare(choice).BreakEvenRate;
        }

        private static BentSheet Sheet(double thickness)
        {
            return new BentSheet { Thickness = Measure.Mm(thickness), Elasticity = Pressure.FromMegapascals(5000), BendingStrength = Pressure.FromMegapascals(30) };
        }

        private static WrapPlan Row(double opening, double height, EdgeWrap front)
        {
            WrapBuild build = new WrapBuild
            {
                PlyThickness = Measure.Mm(6.5),
                ClothThickness = Measure.Mm(1),
                FoamThickness = Measure.Mm(4),
                SqueezedFoam = Measure.Mm(2),
                TurnUnder = Measure.Mm(40),
                EdgeGap = Measure.Mm(1.5),
                Joint = Measure.Mm(1.5),
                Front = front,
                Rear = EdgeWrap.FoamTrimmed,
                Top = EdgeWrap.FoamTrimmed,
                Bottom = EdgeWrap.FoamTrimmed,
                AtJoints = EdgeWrap.FoamTrimmed,
                AtWindows = EdgeWrap.FoamTrimmed,
                IsFoamBacked = false,
                Nap = NapDirection.TowardTop,
                Stretch = ClothStretch.BothWays,
            };
            return PanelWrap.Plan(new WrapJob
            {
                OpeningWidth = Measure.Mm(opening),
                OpeningHeight = Measure.Mm(height),
                Build = build,
                Panels = 3,
                Windows = new[] { new PanelWindow { Opening = new FaceOpening(Measure.Mm(150), Measure.Mm(450), Measure.Mm(150), Measure.Mm(350)), CornerRadius = Measure.Mm(40) } },
            });
        }
    }
}
