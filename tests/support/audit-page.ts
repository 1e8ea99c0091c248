import axe from "axe-core";
import type { Page } from "playwright-core";
import { expect } from "vitest";

const TAGS = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"];
/** The rules that colours can break: all that differs between light and dark. */
const OF_COLOUR = ["color-contrast", "link-in-text-block"];

/**
 * What breaks a rule of WCAG 2.2 A or AA on the page as it stands, in light and in dark colours, with the elements.
 * Nothing moves meanwhile: colours that change slowly would be looked at half way. `leftOut` are rules of axe that are not asked, `within` is the part of the page that is looked at.
 */
export async function auditPage(
  page: Page,
  { leftOut = [], within = "html" }: { readonly leftOut?: readonly string[]; readonly within?: string } = {},
): Promise<readonly string[]> {
  await page.waitForLoadState("networkidle");
  await page.evaluate(`${axe.source}; undefined`);
  const told: string[] = [];
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    const options: axe.RunOptions = {
      runOnly: colorScheme === "light" ? { type: "tag", values: TAGS } : { type: "rule", values: OF_COLOUR },
      rules: Object.fromEntries(leftOut.map((rule) => [rule, { enabled: false }])),
    };
    const { passed, broken } = await page.evaluate(
      async ([where, how]) => {
        const asked = (globalThis as unknown as { axe: typeof axe }).axe;
        const { passes, violations } = await asked.run(where, how);
        return {
          passed: passes.map(({ id }) => id),
          broken: violations.map(({ id, nodes }) => ({
            id,
            html: nodes.map((node) => node.html.slice(0, 160)),
          })),
        };
      },
      [within, options] as const,
    );
    if (within === "html") expect(passed).toContain("color-contrast");
    for (const { id, html } of broken) told.push(`${colorScheme}, ${id}: ${html.join(" | ")}`);
  }
  return told;
}
