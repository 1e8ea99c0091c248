import { compareText } from "../../domain/compare.ts";
import { frozenCopy } from "../../domain/frozen-copy.ts";
import { checkLife, LONGEST_NOTE, type Note, type Notes } from "../../ports/notes.ts";

/** Notes of this process alone. */
export function openNotes(): Notes {
  let kept: readonly (Note & { readonly until: number })[] = [];
  const holding = () => {
    const now = Date.now();
    return kept.filter(({ until }) => until > now && until <= now + LONGEST_NOTE);
  };
  return {
    leaveNotes: async (by, notes, life) => {
      const until = Date.now() + checkLife(life);
      let left = holding();
      for (const { about, body } of frozenCopy(notes)) {
        left = left.filter((note) => note.about !== about || note.by !== by);
        if (body !== undefined) left = [...left, { about, by, body, until }];
      }
      kept = left;
      return "left";
    },
    notesAbout: async (about) =>
      holding()
        .filter((note) => about.includes(note.about))
        .sort((a, b) => compareText(a.about, b.about) || compareText(a.by, b.by))
        .map(({ until: _, ...note }) => Object.freeze(note)),
  };
}
