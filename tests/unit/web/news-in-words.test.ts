import { describe, expect, it } from "vitest";
import { listNewsInWords } from "#web/proposals/list-news-in-words.ts";
import { newComments, newsInWords, type SeenTalk } from "#web/proposals/news-in-words.ts";

const by = (name: string) => ({ by: { id: `person.${name}`, name }, isMine: name === "Me" });
const review = (name: string, at: string, verdict: "ACCEPT" | "ASK_FOR_CHANGES") => ({
  ...by(name),
  at,
  verdict,
});
const comment = (name: string, id: string) => ({ ...by(name), at: id, id });
const open: SeenTalk = {
  ...{
    version: 3,
    isMine: false,
    state: "OPEN",
    reviews: [],
    comments: [comment("Me", "1")],
    commentCount: 1,
  },
};

describe("[J11] what others did with a proposal, in words", () => {
  it("names who judged it, and how it stands then", () => {
    const asked: SeenTalk = {
      ...{ ...open, version: 4, state: "CHANGES_ASKED_FOR" },
      reviews: [review("Rolf", "a", "ASK_FOR_CHANGES")],
    };
    expect(newsInWords(open, asked)).toEqual([
      "Rolf asked for changes.",
      "It is now to be changed by its maker.",
    ]);
    const agreed: SeenTalk = { ...open, reviews: [review("Rolf", "a", "ACCEPT")] };
    expect(newsInWords(open, agreed)).toEqual(["Rolf agreed."]);
  });

  it("tells a new version of somebody else, and its end by its maker", () => {
    expect(newsInWords(open, { ...open, version: 4 })).toEqual([
      "Its maker changed it: this is the new version.",
    ]);
    expect(newsInWords(open, { ...open, version: 4, state: "WITHDRAWN" })).toEqual([
      "It is now withdrawn by its maker.",
    ]);
  });

  it("tells nothing of one's own doing, and nothing where nothing differs", () => {
    expect(newsInWords(open, { ...open })).toEqual([]);
    expect(newsInWords({ ...open, isMine: true }, { ...open, isMine: true, version: 4 })).toEqual([]);
    const accepted: SeenTalk = {
      ...{ ...open, version: 4, state: "ACCEPTED" },
      reviews: [review("Me", "a", "ACCEPT")],
    };
    expect(newsInWords(open, accepted)).toEqual([]);
    const said = { ...open, comments: [...open.comments, comment("Me", "2")], commentCount: 2 };
    expect(newsInWords(open, said)).toEqual([]);
  });

  it("names who said something, also where it stands further on than what is shown", () => {
    const said: SeenTalk = {
      ...open,
      comments: [...open.comments, comment("Cleo", "2"), comment("Rolf", "3"), comment("Cleo", "4")],
      commentCount: 4,
    };
    expect(newsInWords(open, said)).toEqual(["Cleo and Rolf said something below."]);
    expect(newsInWords(open, { ...open, commentCount: 2 })).toEqual(["More was said below."]);
  });

  it("takes comments that are read page by page for no news", () => {
    const long = { ...open, commentCount: 60 };
    const read = { ...long, comments: [...open.comments, comment("Cleo", "2")] };
    expect(newsInWords(long, read)).toEqual([]);
    expect(newComments(long, read)).toEqual([]);
  });

  it("tells who ended a dispute", () => {
    const { state: _, ...dispute } = open;
    expect(newsInWords(dispute, { ...dispute, version: 4, ended: { ...by("Rolf"), at: "b" } })).toEqual([
      "Rolf ended it.",
    ]);
  });
});

describe("[J11] what became of a list, in words", () => {
  const row = (id: string, isMine = false, stands = "is now open") => ({ id, name: id, isMine, stands });

  it("names what came in, what is gone and what stands otherwise", () => {
    const before = { rows: [row("a"), row("b")], count: 2 };
    expect(listNewsInWords(before, { rows: [row("c"), row("a"), row("b")], count: 3 })).toEqual([
      "New here: “c”.",
    ]);
    expect(listNewsInWords(before, { rows: [row("b")], count: 1 })).toEqual(["No longer here: “a”."]);
    expect(
      listNewsInWords(before, { rows: [row("a", false, "is now accepted"), row("b")], count: 2 }),
    ).toEqual(["“a” is now accepted."]);
    expect(listNewsInWords(before, { rows: [row("c"), row("b")], count: 2 })).toEqual([]);
  });

  it("tells nothing of a page that was read on, nor of what is one's own", () => {
    const before = { rows: [row("a")], count: 3 };
    expect(listNewsInWords(before, { rows: [row("a"), row("b"), row("c")], count: 3 })).toEqual([]);
    expect(listNewsInWords(before, { rows: [row("m", true), row("a")], count: 4 })).toEqual([]);
  });

  it("counts what is more than a few", () => {
    const rows = ["a", "b", "c", "d", "e"].map((id) => row(id));
    expect(listNewsInWords({ rows: [], count: 0 }, { rows, count: 5 })).toEqual([
      "New here: “a”.",
      "New here: “b”.",
      "New here: “c”.",
      "And 2 more changed.",
    ]);
  });

  it("counts what came and is not shown yet", () => {
    const before = { rows: [row("a")], count: 3 };
    expect(listNewsInWords(before, { rows: [row("a")], count: 15 })).toEqual(["12 more came further down."]);
    const named = { rows: ["b", "c", "d", "e", "a"].map((id) => row(id)), count: 1003 };
    expect(listNewsInWords(before, named).at(-1)).toBe("And 997 more changed.");
  });
});
