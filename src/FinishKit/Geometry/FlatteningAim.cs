namespace FinishKit;

/// <summary>What packers are kept least by.</summary>
public enum FlatteningAim
{
    /// <summary>Least packing over all points together: least stuff, most points touched.</summary>
    LeastTotal = 0,

    /// <summary>The thickest packer as thin as can be: shortest fasteners, least room lost at the worst point.</summary>
    LeastGreatest = 1,
}
