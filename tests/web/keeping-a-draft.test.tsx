import { act, fireEvent, screen } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";

afterEach(() => vi.useRealTimers());

const VERSION = "query ($id: ID!) { proposal(id: $id) { version } }";
/** Longer than the pause after which a form is kept by itself, in milliseconds. */
const LONGER = 2_000;

it("[J46] what is being kept when a pause ends is kept once, and the page that follows shows its newest version", async () => {
  const { ask } = await openApi([sawGraph]);
  const sent: string[] = [];
  const held = Promise.withResolvers<void>();
  await renderPage(
    "/house/propose?relation=introduced&subject=tool.circular-saw",
    async (query, variables) => {
      sent.push(/(?:query|mutation) (\w+)/.exec(query)?.[1] ?? "?");
      if (query.startsWith("mutation BeginDraft")) await held.promise;
      return ask(query, variables);
    },
  );
  const when = await screen.findByRole("textbox", { name: "When" });
  // From here on the pause lasts until the test ends it.
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  await act(async () => void fireEvent.change(when, { target: { value: "1805" } }));
  await act(async () => void fireEvent.click(screen.getByRole("radio", { name: /^I remember it/ })));
  const see = screen.getByRole("button", { name: "See what it would change" });
  await act(async () => void fireEvent.click(see));
  await expect.poll(() => sent).toContain("BeginDraft");
  await act(() => vi.advanceTimersByTimeAsync(LONGER));
  vi.useRealTimers();
  await act(async () => held.resolve());
  await screen.findByRole("heading", { level: 2, name: "Your draft" });
  expect(sent.filter((name) => name.endsWith("Draft"))).toEqual(["BeginDraft"]);
  const id = location.pathname.split("/").at(-1);
  expect((await ask(VERSION, { id })).data.proposal.version).toBe(1);
});
