import { type Brow, type Face, type FaceSide, mm, type Point, type Polyline } from "brow-geometry";

/**
 * The symmetric face on which published conventions are compared: inner canthi 31.8 apart, outer
 * 87.8, pupils 63, nose wings 31.4 wide and 38 below the canthal line, iris 11.71; level canthi.
 *
 * Widths: Farkas, Anthropometry of the Head and Face, 1994 (from memory); pupils: Dodgson,
 * Proc SPIE 5291:36–46, 2004; iris: Rüfer, Schröder & Erb, Cornea 2005;24:259–261. The depth of the
 * wings below the canthal line and the brow are invented.
 */
export function syntheticFace(): SyntheticFace {
  const left = sideOf(1);
  return {
    right: sideOf(-1),
    left,
    midline: {
      glabella: mm([0, 16]),
      sellion: mm([0, 2]),
      pronasale: mm([0, -34]),
      subnasale: mm([0, -44]),
      labialeSuperius: mm([0, -58]),
      stomion: mm([0, -66]),
      stomionSuperius: mm([0, -66]),
      stomionInferius: mm([0, -66]),
      menton: mm([0, -112]),
    },
  };
}

type SyntheticSide = Required<FaceSide<"mm">> & { readonly brow: Required<Brow<"mm">> };

export interface SyntheticFace extends Face<"mm"> {
  readonly right: SyntheticSide;
  readonly left: SyntheticSide;
  readonly midline: Required<Face<"mm">["midline"]>;
}

function sideOf(sign: 1 | -1): SyntheticSide {
  const at = (x: number, y: number): Point<"mm"> => mm([sign * x, y]);
  const along = (...points: readonly (readonly [number, number])[]): Polyline<"mm"> =>
    points.map(([x, y]) => at(x, y));
  return {
    endocanthion: at(15.9, 0),
    exocanthion: at(43.9, 0),
    pupil: at(31.5, 0),
    limbusMedial: at(31.5 - 11.71 / 2, 0),
    limbusLateral: at(31.5 + 11.71 / 2, 0),
    alare: at(15.7, -38),
    cheilion: at(25, -66),
    upperLid: along([15.9, 0], [23, 3.6], [31.5, 4.6], [39, 3.2], [43.9, 0]),
    lowerLid: along([15.9, 0], [23, -3.4], [31.5, -4.4], [39, -3], [43.9, 0]),
    brow: {
      upper: along(
        [14.5, 20],
        [22, 22.4],
        [30, 24.6],
        [38, 26],
        [44, 25.6],
        [51, 22.4],
        [58, 17.6],
      ),
      lower: along(
        [14.5, 12.5],
        [22, 15.6],
        [30, 18.2],
        [38, 20],
        [44, 20.4],
        [51, 19],
        [58, 17.2],
      ),
    },
  };
}
