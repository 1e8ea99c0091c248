import { expect, it } from "vitest";
import type { Edit } from "#server/domain/change.ts";
import { planMerge } from "#server/domain/sharing/plan-merge.ts";
import type { SharedEdit } from "#server/domain/sharing/shared-changes.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";

it.each(["each below the next", "each below the one before"])(
  "[I16] takes tens of thousands of things that name each other, %s, as one group",
  (order) => {
    const count = 30_000;
    const change = adding(
      ...Array.from({ length: count }, (_, n) => {
        const other = order === "each below the next" ? n + 1 : n - 1;
        return aTerm(`region.r${n}`, other >= 0 && other < count ? { broader: `region.r${other}` } : {});
      }),
    );
    const shared = change.map((edit: Edit) => ({ edit }) as SharedEdit);
    const { groups } = planMerge(shared, () => undefined);
    expect(groups.map(({ change: group }) => group.length)).toEqual([count]);
  },
);
