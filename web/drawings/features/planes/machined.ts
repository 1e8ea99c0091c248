import { box, type Point } from "../../pen.ts";
import { board, FACE, faceBox } from "../board.ts";
import { arc, row } from "../curves.ts";
import { type Drawing, detail, edge, knife, span, tell } from "../mark.ts";
import { arrises, goingBack, hollows, surface } from "./surface.ts";

const BACK: Point = [40, -96];
const START: Point = [14, 158];

/** Distance from one scallop to the next, in drawing units: the same everywhere. */
export const SCALLOP = 10;

export const planerScallops: Drawing = {
  title: "Planer scallops",
  tells: "Even shallow waves square to the length of the board, of one pitch from end to end.",
  draw: (level) => {
    const pitch = level === "small" ? 21.5 : SCALLOP;
    const count = Math.floor(172 / pitch);
    const widths = Array.from({ length: count }, () => pitch);
    const at = arrises(START[0], widths);
    const [a, b, c] = at.slice(3) as [number, number, number];
    return [
      ...surface({ profile: hollows(START, widths, level === "small" ? 5 : 3), foot: 204, back: BACK }),
      detail(
        at
          .slice(1, -1)
          .map((x) => goingBack([x, START[1]], BACK))
          .join(""),
      ),
      knife(goingBack([a, START[1]], BACK) + goingBack([b, START[1]], BACK) + goingBack([c, START[1]], BACK)),
      span([a + BACK[0], 50], [b + BACK[0], 50]),
      span([b + BACK[0], 50], [c + BACK[0], 50]),
    ];
  },
};

export const swirlArcs: Drawing = {
  title: "Swirl arcs centred on the board",
  tells: "Arcs whose centre travels along the middle of the board, as from a turning bar of cutters.",
  draw: (level) => {
    const { x, y, width, height } = FACE;
    const middle = y + height / 2;
    const r = height * 0.62;
    const pitch = level === "small" ? 20 : 9;
    return [
      ...board(FACE, level),
      detail(
        row(Math.ceil((width + r) / pitch), (i) => arc(x - r + pitch * i, middle, r, -60, 60)),
        faceBox(FACE),
      ),
      knife(arc(x + 44, middle, r, -54, 54), faceBox(FACE)),
      knife(`M${x - 8} ${middle}H${x + width + 22}`),
      tell([x + 20, 24], [x + 44 + r * 0.66, y + 8]),
      tell([226, middle - 40], [x + width + 8, middle - 1]),
    ];
  },
};

export const machineSandingScratches: Drawing = {
  title: "Machine-sanding scratches",
  tells:
    "Straight fine scratches, all in one direction, running on through the hollow of an older plane stroke.",
  draw: (level) => {
    const { x, y, width, height } = FACE;
    const pitch = level === "small" ? 11 : 3.4;
    return [
      ...board(FACE, level),
      detail(
        row(
          Math.floor((height - 6) / pitch),
          (i) => `M${x + 3 + ((i * 29) % 37)} ${y + 4 + pitch * i}H${x + width - 3 - ((i * 43) % 61)}`,
        ),
        faceBox(FACE),
      ),
      edge(
        `M${x + 92} ${y}C${x + 84} ${y + 50} ${x + 84} ${y + 96} ${x + 92} ${y + height}M${x + 126} ${y}C${x + 134} ${y + 50} ${x + 134} ${y + 96} ${x + 126} ${y + height}`,
      ),
      knife(`M${x - 6} ${y + 61}H${x + width + 20}`),
      tell([x + 60, 20], [x + 104, y + 58]),
    ];
  },
};

export const abrasiveScratches: Drawing = {
  title: "Scratches of abrasive paper",
  tells: "Fine parallel scratches, short and overlapping, also down in the hollows of a moulding.",
  draw: (level) => {
    const { x, y, width } = FACE;
    const few = level === "small" ? 2.6 : 1;
    return [
      ...board(FACE, level),
      edge(`M${x} ${y + 96}H${x + width}M${x} ${y + 128}H${x + width}`),
      detail(
        row(Math.floor(30 / few), (i) => {
          const at = y + 5 + few * i * 3;
          const from = x + 4 + ((i * 47) % 80);
          return `M${from} ${at}l54 -3M${from + 70} ${at + 2}l${40 - (i % 3) * 8} -3`;
        }),
        box(x, y, width, 96),
      ),
      detail(
        row(
          Math.floor(9 / few),
          (i) =>
            `M${x + 8 + ((i * 53) % 70)} ${y + 99 + few * 3.1 * i}l66 -1M${x + 104 + ((i * 31) % 20)} ${y + 101 + few * 3.1 * i}l58 -1`,
        ),
        box(x, y + 96, width, 32),
      ),
      detail(`M${x} ${y + 104}H${x + width}M${x} ${y + 120}H${x + width}`),
      tell([x + 172, 22], [x + 142, y + 112]),
    ];
  },
};

export const toothedGround: Drawing = {
  title: "Toothed ground",
  tells: "Fine parallel grooves about a millimetre apart on the ground under a lifted leaf.",
  draw: (level) => {
    const { x, y, width, height } = FACE;
    const pitch = level === "small" ? 10 : 4;
    const leaf = `M${x} ${y}H${x + 76}C${x + 92} ${y + 40} ${x + 66} ${y + 74} ${x + 84} ${y + 104}S${x + 72} ${y + 130} ${x + 80} ${y + height}H${x}z`;
    const lift = `M${x + 76} ${y}C${x + 92} ${y + 40} ${x + 66} ${y + 74} ${x + 84} ${y + 104}S${x + 72} ${y + 130} ${x + 80} ${y + height}l12 -4C${x + 90} ${y + 126} ${x + 106} ${y + 118} ${x + 98} ${y + 98}S${x + 104} ${y + 40} ${x + 90} ${y}z`;
    return [
      ...board(FACE, level),
      detail(
        row(Math.ceil(width / pitch), (i) => `M${x + 40 + pitch * i} ${y}l10 ${height}`),
        faceBox(FACE),
      ),
      { kind: "body", d: leaf, weight: "edge" },
      { kind: "body", d: lift, weight: "outline" },
      detail(
        row(
          level === "small" ? 3 : 6,
          (i) => `M${x + 6} ${y + 14 + 22 * i}c20 ${6 - 2 * i} 36 ${-4 + i} 58 0`,
        ),
        leaf,
      ),
      span([x + 133, y - 10], [x + 133 + pitch * (level === "small" ? 2 : 5), y - 10]),
      tell([x + 60, 20], [x + 92, y + 14]),
      edge(faceBox(FACE)),
    ];
  },
};
