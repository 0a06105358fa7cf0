#pragma warning disable
using System; using System.Collections.Generic; using UnitsNet;
namespace FinishKit;
public enum FastenerKind { SmoothNail, WoodScrew }
public sealed class FastenerSeries {
  public FastenerSeries(string name, FastenerKind kind, Length shank, IReadOnlyList<Length> lengths){Name=name;Kind=kind;Shank=shank;Lengths=lengths;}
  public string Name{get;} public Source ToleranceSource=>Sources.ReadingError; public FastenerKind Kind{get;} public Length Shank{get;} public IReadOnlyList<Length> Lengths{get;}
  static Length[] In(params double[] x)=>Array.ConvertAll(x,v=>Length.FromInches(v));
  public TolerancedLength WithTolerance(Length l)=>TolerancedLength.PlusMinus(l, Length.FromInches(l.Inches<=1?1/32.0:l.Inches<=2.5?1/16.0:3/32.0));
  public static FastenerSeries Brad18 {get;} = new("18 ga brad",FastenerKind.SmoothNail,Measure.Mm(1.25),In(0.625,0.75,1,1.25,1.5,1.75,2));
  public static FastenerSeries Pin23 {get;} = new("23 ga pin",FastenerKind.SmoothNail,Measure.Mm(0.64),In(0.5,0.625,0.75,1,1.1875,1.375,2));
  public static FastenerSeries Finish16 {get;} = new("16 ga nail",FastenerKind.SmoothNail,Measure.Mm(1.6),In(1,1.25,1.5,1.75,2,2.5));
  public static IReadOnlyList<FastenerSeries> Nails {get;} = [Pin23,Brad18,Finish16];
}
public sealed class SheetGoods {
  public SheetGoods(string name, Length nominal, TolerancedLength t, string family){Name=name;Nominal=nominal;Thickness=t;Family=family;}
  public Source Source=>Sources.ReadingError; public string Name{get;} public Length Nominal{get;} public TolerancedLength Thickness{get;} public string Family{get;}
  static SheetGoods B(double n,double lo,double hi)=>new($"{n} mm birch plywood, sanded",Measure.Mm(n),TolerancedLength.Between(Measure.Mm(lo),Measure.Mm(hi)),"birch plywood, sanded");
  public static SheetGoods Birch12{get;}=B(12,11.3,12.5); public static SheetGoods Birch15{get;}=B(15,14.2,15.6); public static SheetGoods Birch18{get;}=B(18,17.1,18.7);
  public static IReadOnlyList<SheetGoods> Birch{get;}=[Birch12,Birch15,Birch18];
  public static IReadOnlyList<SheetGoods> All => Birch;
}
internal static class MaterialTables { internal const string Edition="2026-11"; }
