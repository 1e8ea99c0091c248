import { chestOfDrawers as chestOfDrawersForm } from "../../chest-of-drawers.ts";
import { dropLeafTable as dropLeafTableForm } from "../../drop-leaf-table.ts";
import { fallFrontDesk as fallFrontDeskForm } from "../../fall-front-desk.ts";
import { highChest as highChestForm } from "../../high-chest.ts";
import { press as pressForm, wardrobe as wardrobeForm } from "../../press.ts";
import type { DrawnForm } from "../../shape.ts";
import { sideChair as sideChairForm } from "../../side-chair.ts";
import { body, type Drawing, detail, type Mark, SIDE } from "../mark.ts";

const MARGIN = 10;

/** The first view of a form that pieces are drawn by, fitted into the square. */
const fitted = ({ label, views: [view] }: DrawnForm, tells: string): Drawing => ({
  title: label.charAt(0).toUpperCase() + label.slice(1),
  tells,
  draw: (level) => {
    const scale = (SIDE - 2 * MARGIN) / Math.max(view.width, view.height);
    const marks = view.shapes.flatMap((shape): Mark[] => [
      body(shape.outline, shape.weight),
      ...(shape.detail === undefined || level === "small" ? [] : [detail(shape.detail)]),
    ]);
    return [
      {
        kind: "inset",
        x: (SIDE - view.width * scale) / 2,
        y: (SIDE - view.height * scale) / 2,
        scale,
        marks,
      },
    ];
  },
});

export const chestOfDrawers: Drawing = fitted(
  chestOfDrawersForm,
  "A case filled with drawers from top to base, on bracket feet.",
);
export const highChest: Drawing = fitted(highChestForm, "A chest of drawers on a lower case with long legs.");
export const dropLeafTable: Drawing = fitted(
  dropLeafTableForm,
  "A table with hinged leaves that hang at its sides and are held up by swinging legs.",
);
export const sideChair: Drawing = fitted(
  sideChairForm,
  "A chair without arms: back of stiles and splat, seat rails, legs.",
);
export const fallFrontDesk: Drawing = fitted(
  fallFrontDeskForm,
  "Drawers below a sloping lid that falls forward to write on.",
);
export const wardrobe: Drawing = fitted(wardrobeForm, "A tall case closed by doors, for hanging clothes.");
export const press: Drawing = fitted(pressForm, "Doors over drawers: sliding trays stand behind the doors.");
