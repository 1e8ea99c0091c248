import { box, line, polygon } from "../../pen.ts";
import { closed, row, run } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, says, span, tell } from "../mark.ts";

/** The lower corner of a drawer cut across: the side stands at the left, the bottom runs out to the right. */
const SIDE = { x: 44, width: 44, top: 18 } as const;
const RIGHT = 224;
const inner = SIDE.x + SIDE.width;

/** A board that goes on to the right: hatched and open there. */
const bottom = (x: number, top: number, thick: number): readonly Mark[] => cut(box(x, top, RIGHT - x, thick));

const words = (): readonly Mark[] => [says(22, 112, "out"), says(170, 60, "inside")];

export const bottomNailedUp: Drawing = {
  title: "Bottom nailed up to the sides",
  tells: "The bottom lies under the side, its edge to be seen from outside, and is nailed from below.",
  draw: () => [
    ...cut(box(SIDE.x, SIDE.top, SIDE.width, 142)),
    ...bottom(SIDE.x, 160, 28),
    body(polygon([60, 188], [72, 188], [67, 112], [65, 112]), "edge"),
    body(polygon([54, 188], [78, 188], [75, 194], [57, 194]), "edge"),
    ...words(),
    knife(line([SIDE.x, 158], [SIDE.x, 190])),
    tell([16, 214], [SIDE.x - 1, 176]),
    tell([120, 226], [76, 195]),
  ],
};

/** Depth of the groove, and the bevel by which the bottom is thinned to enter it. */
export const bottomInGroove: Drawing = {
  title: "Bottom in a groove",
  tells: "The bevelled edge of the bottom enters a groove of the side; nothing of it shows from outside.",
  draw: () => [
    ...cut(
      polygon(
        [SIDE.x, SIDE.top],
        [inner, SIDE.top],
        [inner, 142],
        [inner - 18, 142],
        [inner - 18, 158],
        [inner, 158],
        [inner, 206],
        [SIDE.x, 206],
      ),
    ),
    ...cut(polygon([inner - 16, 143], [RIGHT, 143], [RIGHT, 172], [inner + 52, 172], [inner - 16, 157])),
    ...words(),
    tell([140, 222], [inner + 24, 168]),
    tell([22, 222], [inner - 17, 158]),
  ],
};

export const quarterRoundSlips: Drawing = {
  title: "Quarter-round slip at the bottom groove",
  tells: "A small quarter-round fillet lies inside along the side and makes the groove deeper.",
  draw: () => [
    ...cut(box(SIDE.x, SIDE.top, SIDE.width - 12, 188)),
    ...cut(
      `${closed(run([inner - 12, 106], ["h", inner + 26, 144]), [inner - 2, 144], [inner - 2, 160], [inner + 26, 160], [inner + 26, 200], [inner - 12, 200])}`,
    ),
    ...cut(polygon([inner, 145], [RIGHT, 145], [RIGHT, 172], [inner + 56, 172], [inner, 159])),
    ...words(),
    tell([178, 90], [inner + 21, 118]),
    tell([178, 222], [inner + 27, 180]),
  ],
};

export const bottomInDeepRebate: Drawing = {
  title: "Bottom and runner in a deep rebate",
  tells: "The side hides the edge of the bottom and the runner under it: nothing shows from outside.",
  draw: () => [
    ...cut(
      polygon(
        [SIDE.x, SIDE.top],
        [inner, SIDE.top],
        [inner, 140],
        [SIDE.x + 16, 140],
        [SIDE.x + 16, 208],
        [SIDE.x, 208],
      ),
    ),
    ...bottom(SIDE.x + 16, 140, 28),
    ...cut(box(SIDE.x + 16, 168, 42, 40)),
    ...words(),
    knife(line([SIDE.x - 3, 136], [SIDE.x - 3, 210])),
    tell([14, 150], [SIDE.x - 4, 174]),
    tell([150, 226], [SIDE.x + 59, 196]),
  ],
};

export const drawerOnItsSides: Drawing = {
  title: "Drawer running on its sides",
  tells: "No strip under it and no groove in the side: its lower edge itself runs on the rail, and wears.",
  draw: () => [
    ...cut(
      closed(
        run(
          [SIDE.x, SIDE.top],
          ["l", inner, SIDE.top],
          ["l", inner, 132],
          ["l", inner - 16, 132],
          ["l", inner - 16, 148],
          ["l", inner, 148],
          ["l", inner, 176],
          ["c", inner - 6, 186, SIDE.x + 18, 189, SIDE.x, 182],
        ),
      ),
    ),
    ...cut(polygon([inner - 14, 133], [RIGHT, 133], [RIGHT, 160], [inner + 52, 160], [inner - 14, 147])),
    ...cut(box(14, 190, 210, 26)),
    ...words(),
    knife(`M${inner} 176C${inner - 6} 186 ${SIDE.x + 18} 189 ${SIDE.x} 182`),
    tell([140, 178], [inner + 2, 181]),
  ],
};

export const sideLowerAndRounded: Drawing = {
  title: "Side lower than the front, its top edge rounded",
  tells: "The top of the side lies a few millimetres below that of the front and is rounded over.",
  draw: (level) => {
    const top = 62;
    return [
      body(box(26, 40, 196, 160)),
      ...(level === "full"
        ? [detail(row(4, (i) => line([40, 66 + 34 * i], [196 - 12 * i, 64 + 34 * i])))]
        : []),
      ...cut(`M92 206V${top + 22}A22 22 0 0 1 ${92 + 44} ${top + 22}V206z`),
      says(200, 34, "front", "end"),
      knife(line([78, top], [152, top])),
      knife(line([78, 40], [152, 40])),
      span([152, 40], [152, top]),
      tell([190, 110], [134, top + 14]),
    ];
  },
};

export const severalTonguedBoards: Drawing = {
  title: "Bottom of several tongued boards",
  tells: "Narrow boards are joined by tongue and groove, cut across here; their grain runs front to back.",
  draw: () => {
    const board = (x: number, width: number, isLast: boolean) =>
      polygon(
        [x, 116],
        [x + width, 116],
        ...(isLast
          ? []
          : ([
              [x + width, 130],
              [x + width + 13, 130],
              [x + width + 13, 142],
              [x + width, 142],
            ] as const)),
        [x + width, 156],
        [x, 156],
        [x, 144],
        [x + 14, 144],
        [x + 14, 128],
        [x, 128],
      );
    return [
      ...cut(board(12, 70, false)),
      ...cut(board(84, 62, false)),
      ...cut(board(148, 78, true)),
      edge(`M12 128H26V144H12`),
      tell([60, 74], [90, 128]),
      tell([190, 74], [154, 128]),
    ];
  },
};
