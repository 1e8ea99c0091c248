import { cleanup, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { SidesOfEdit } from "#web/proposals/SidesOfEdit.tsx";

afterEach(cleanup);

const row = (what: string, before: string | null, after: string | null) => ({
  ...{ what, before, after, differs: before !== after },
});
const edit = (does: "ADDED" | "CHANGED" | "WITHDRAWN", before: string | null, after: string | null) => ({
  ...{ of: "claim.x", kind: "claim", does, before, after },
  rows: [
    row("date", before && "1820", after && "1760"),
    row("region", before && "England", after && "England"),
  ],
});
const heads = () => screen.getAllByRole("columnheader").map(({ textContent }) => textContent);
const cells = (name: RegExp) =>
  within(screen.getByRole("row", { name }))
    .getAllByRole("cell")
    .map(({ textContent }) => textContent);

describe("[J8] an edit of a proposal", () => {
  it("that changes something shows both readings of what differs", () => {
    render(<SidesOfEdit edit={edit("CHANGED", "from 1820", "from 1760")} isOver={false} />);
    expect(heads()).toEqual(["Field", "As it is", "As it would be"]);
    expect(cells(/^date/)).toEqual(["1820", "1760"]);
    expect(screen.getByText("As it would be: from 1760")).toBeTruthy();
  });

  it("that adds something shows what it would be, and no empty column beside it", () => {
    render(<SidesOfEdit edit={edit("ADDED", null, "from 1760")} isOver={false} />);
    expect(heads()).toEqual(["Field", "As it would be"]);
    expect([cells(/^date/), cells(/^region/)]).toEqual([["1760"], ["England"]]);
  });

  it("that takes something out shows what was there", () => {
    render(<SidesOfEdit edit={edit("WITHDRAWN", "from 1820", null)} isOver={true} />);
    expect(heads()).toEqual(["Field", "As it was"]);
    expect([cells(/^date/), cells(/^region/)]).toEqual([["1820"], ["England"]]);
    expect(screen.getByRole("link", { name: "from 1820" }).getAttribute("href")).toBe("/claims/claim.x");
  });
});
