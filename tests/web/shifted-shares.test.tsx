import { render, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { ShiftedShares } from "#web/answers/ShiftedShares.tsx";

const odds = (original: number, later: number, reused: number) => ({ original, later, reused, reworked: 0 });

describe("what a part may be on two states of the evidence", () => {
  it("[K12] is a bar for each side, shared by the states, said in full to who does not see it, with a legend of what is there", () => {
    const { container } = render(
      <ShiftedShares
        sides={[
          { name: "As it is", odds: odds(0.75, 0.25, 0) },
          { name: "As it would be", odds: odds(0.4, 0.6, 0) },
        ]}
      />,
    );
    const [was, is] = screen.getAllByRole("img");
    expect(was?.getAttribute("aria-label")).toBe(
      "As it is: 0.75 of the first making; 0.25 later than the piece; 0.00 from an earlier piece; 0.00 of the first making, worked over since",
    );
    const widths = (bar: Element | undefined) =>
      [...(bar?.querySelectorAll('rect[fill^="url"]') ?? [])].map((rect) =>
        Number(rect.getAttribute("width")),
      );
    expect(widths(was)).toEqual([180, 60, 0, 0]);
    expect(widths(is)).toEqual([96, 144, 0, 0]);
    expect([...container.querySelectorAll("li")].map(({ textContent }) => textContent?.trim())).toEqual([
      "of the first making",
      "later than the piece",
    ]);
  });
});
