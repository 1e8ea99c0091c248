import { box, line, polygon } from "../../pen.ts";
import { open, row, run } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";
import { holeMarks, NAIL, roseHead, roseHeadSide, shank } from "./nail-views.ts";

const { front, side, plan, head, tip } = NAIL;

export const roseHeadNail: Drawing = {
  title: "Wrought nail with a rose head",
  tells: "Three to five uneven hammer facets on the head, and a shank that tapers on all four sides.",
  draw: (level) => {
    const { outline, ridges } = roseHead(plan, 58, 24);
    return [
      body(shank(front, { under: 12, tip: 2 })),
      body(shank(side, { under: 11, tip: 2 })),
      body(polygon(...roseHeadSide(front, 27))),
      body(polygon(...roseHeadSide(side, 25, 3))),
      edge(line([front - 7, head], [front - 2, head - 17], [front + 9, head])),
      edge(line([side - 9, head], [side - 2, head - 17], [side + 6, head])),
      ...(level === "full"
        ? [
            detail(
              row(
                4,
                (i) =>
                  line([front - 5, 66 + 30 * i], [front - 3, 84 + 30 * i]) +
                  line([side + 3, 60 + 32 * i], [side + 2, 80 + 32 * i]),
              ),
            ),
          ]
        : []),
      body(outline),
      edge(ridges),
      ...holeMarks(11, 11, level),
      tell([226, 18], [plan + 12, 48]),
    ];
  },
};

export const fourSidedShank: Drawing = {
  title: "Shank that tapers on four sides",
  tells: "Both views narrow to a drawn point; the hole is square.",
  draw: (level) => [
    body(shank(front, { under: 13, tip: 2 })),
    body(shank(side, { under: 13, tip: 2 })),
    body(polygon(...roseHeadSide(front, 25))),
    body(polygon(...roseHeadSide(side, 25, 2))),
    ...holeMarks(12, 12, level),
    body(box(plan - 12, 44, 24, 24)),
    body(box(plan - 6, 90, 12, 12), "edge"),
    says(plan, 36, "sections"),
    span([front - 12, 66], [front + 12, 66]),
    span([side - 12, 66], [side + 12, 66]),
    span([front - 5, 176], [front + 5, 176]),
    span([side - 5, 176], [side + 5, 176]),
  ],
};

export const tHeadNail: Drawing = {
  title: "T-head or L-head nail",
  tells:
    "The head is beaten out to one or both sides, or the point is spread flat, so that the nail sinks in.",
  draw: (level) => [
    body(shank(front, { under: 7, tip: 3, shoulder: 186 }, head)),
    body(
      `${open(
        run(
          [front - 24, head - 8],
          ["l", front + 24, head - 7],
          ["l", front + 25, head],
          ["l", front + 8, head + 4],
          ["l", front - 8, head + 4],
          ["l", front - 25, head],
        ),
      )}z`,
    ),
    body(
      `M${side - 6} ${head - 8}L${side + 7} ${head - 8}L${side + 6} ${head}C${side + 5} 110 ${side + 3} 160 ${side + 1} ${tip}L${side - 1} ${tip}C${side - 3} 160 ${side - 5} 110 ${side - 6} ${head}z`,
    ),
    detail(line([front - 5, 60], [front - 3, 160]) + line([side - 3, 60], [side - 2, 140])),
    body(polygon([plan - 24, 50], [plan + 25, 51], [plan + 23, 66], [plan - 25, 65])),
    edge(line([plan - 8, 50], [plan - 8, 65]) + line([plan + 8, 51], [plan + 8, 66])),
    ...holeMarks(7, 6, level),
    tell([16, 18], [front - 22, head - 9]),
    tell([222, 24], [plan + 20, 49]),
  ],
};

export const forgedTack: Drawing = {
  title: "Hand-forged tack",
  tells: "A short square taper under an irregular head, no two alike.",
  draw: () => {
    const tack = (cx: number, top: number, size: number, lean: number) => [
      body(
        polygon(
          [cx - 8 * size, top],
          [cx + 8 * size, top],
          [cx + 1 + lean, top + 78 * size],
          [cx - 1 + lean, top + 78 * size],
        ),
      ),
      body(
        polygon(
          [cx - 27 * size, top + 2],
          [cx - 18 * size, top - 9 * size],
          [cx + 2, top - 13 * size],
          [cx + (21 + lean) * size, top - 8 * size],
          [cx + 28 * size, top + 3],
        ),
      ),
      edge(
        line(
          [cx - 18 * size, top - 9 * size],
          [cx - 6, top + 2],
          [cx + 2, top - 13 * size],
          [cx + 12, top + 3],
        ),
      ),
    ];
    const first = roseHead(56, 190, 26, 10);
    const second = roseHead(150, 188, 24, 50);
    return [
      ...tack(56, 46, 1, 0),
      ...tack(150, 48, 0.92, -5),
      body(first.outline),
      edge(first.ridges),
      body(second.outline),
      edge(second.ridges),
      knife(line([56 + 30, 190], [150 - 30, 189])),
      tell([206, 226], [172, 196]),
      tell([206, 150], [172, 178]),
    ];
  },
};

export const sprig: Drawing = {
  title: "Headless sprig or brad",
  tells: "A thin flat taper without a head, or with a lip to one side only, sheared from strip.",
  draw: (level) => [
    body(polygon([front - 9, head - 6], [front + 9, head - 6], [front + 2, tip], [front - 2, tip])),
    body(polygon([side - 4, head - 6], [side + 4, head - 6], [side + 4, tip], [side - 4, tip])),
    detail(row(level === "small" ? 5 : 12, (i) => line([side - 3, 50 + 13 * i], [side + 3, 46 + 13 * i]))),
    body(box(plan - 9, 54, 18, 8)),
    ...holeMarks(8, 4, level),
    tell([20, 16], [front - 6, head - 8]),
    tell([150, 16], [side + 3, head - 8]),
  ],
};
