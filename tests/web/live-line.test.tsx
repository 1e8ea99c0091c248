import { act, screen, waitFor } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";
import { presenceInWords } from "#web/examination/presence-in-words.ts";
import { type Following, LiveProvider } from "#web/shared/live/live.ts";

const CREATE = `mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id } } } }`;
const CHANGE = `mutation ($id: ID!, $on: Int!, $piece: PieceInput!) {
  changeExamination(id: $id, expectedVersion: $on, piece: $piece) { __typename } }`;

// What the server would tell is the test's to say.
// biome-ignore lint/suspicious/noExplicitAny: see above
type Any = any;

/** An open examination, and what the server tells it. */
async function openPiece() {
  const { ask } = await openApi([sawGraph]);
  const { data } = await ask(CREATE, { piece: sawnChest });
  const id = data.done.examination.id as string;
  const following: Following<Any, Any>[] = [];
  const source = async () => ({
    follow: (each: Following<Any, Any>) => {
      following.push(each);
      return () => following.splice(following.indexOf(each), 1);
    },
  });
  await renderPage(`/pieces/${id}`, ask, (page) => <LiveProvider value={source as Any}>{page}</LiveProvider>);
  await screen.findByRole("region", { name: "Conclusions" });
  const of = (name: string) => {
    const found = following.find(({ document }) => JSON.stringify(document).includes(`"${name}"`));
    if (!found) throw new Error(`${name} is not followed`);
    return found;
  };
  // The line is fetched after the page.
  await waitFor(() => of("ExaminationNews"));
  const news = (sequence: number, versions: readonly number[], readAnew = false) =>
    act(async () =>
      of("ExaminationNews").take({
        news: { sequence, readAnew, hasMore: false, changes: versions.map((version) => ({ version })) },
      }),
    );
  return { ask, id, of, news, following };
}

describe("[Z7] the line that says what others do", () => {
  it("says what somebody else changed, and shows it", async () => {
    const { ask, id, news } = await openPiece();
    await news(5, []);
    await ask(CHANGE, { id, on: 1, piece: { ...sawnChest, title: "Named by another" } });
    await news(6, [2]);
    expect(await screen.findByText("Somebody else changed: Title.")).toBeTruthy();
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Named by another");
  });

  it("asks what stands now when it begins, and where it is told to read anew", async () => {
    const { ask, id, news } = await openPiece();
    await ask(CHANGE, { id, on: 1, piece: { ...sawnChest, title: "Before it began" } });
    await news(5, []);
    expect(await screen.findByRole("heading", { level: 1, name: "Before it began" })).toBeTruthy();
    await ask(CHANGE, { id, on: 2, piece: { ...sawnChest, title: "Too much to tell" } });
    await news(60_000, [], true);
    expect(await screen.findByRole("heading", { level: 1, name: "Too much to tell" })).toBeTruthy();
  });

  it("says that the connection was lost until it is back, and goes on from what it knows", async () => {
    const { of, news } = await openPiece();
    expect(of("ExaminationNews").variables()).toMatchObject({ since: null });
    await news(5, []);
    await act(async () => of("ExaminationNews").tell?.("lost"));
    expect(screen.getByText(/^Connection lost/)).toBeTruthy();
    expect(of("ExaminationNews").variables()).toMatchObject({ since: 5 });
    await news(9, []);
    expect(screen.queryByText(/^Connection lost/)).toBeNull();
  });

  it("says who else is there and what they do, each once", () => {
    const other = { isYou: false, name: null, part: null, isEditing: false };
    const labelOf = (part: string) => (part === "back" ? "Back boards" : undefined);
    expect(
      presenceInWords(
        [
          { ...other, name: "Rita", part: "back", isEditing: true },
          { ...other, isYou: true },
          { ...other, part: "gone" },
          other,
        ],
        6,
        labelOf,
      ),
    ).toEqual([
      "Rita is editing Back boards.",
      "You, in another window, are looking at this piece.",
      "Somebody is looking at this piece.",
      "2 more have it open.",
    ]);
    expect(presenceInWords([], 0, labelOf)).toEqual([]);
  });
});
