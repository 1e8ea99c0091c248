import type { Written } from "../written.ts";
import type { Told } from "./told.ts";

/** Kinds of card that are about a proposal or a dispute. */
const TALK: readonly string[] = ["proposal", "review", "comment", "dispute", "decision"];

/** What a write changed that can be followed. */
export function toldOf({ sequence, examination, revision, cards = [], deed }: Written): readonly Told[] {
  const talk = cards.filter(({ kind }) => TALK.includes(kind));
  const own = talk.filter(({ kind }) => kind === "proposal" || kind === "dispute").map(({ id }) => id);
  const about = talk.length > own.length && deed?.about !== undefined ? [deed.about] : [];
  return [
    ...(examination ? [{ kind: "examination", sequence, ...examination } as const] : []),
    ...(revision === undefined ? [] : [{ kind: "graph", sequence, revision } as const]),
    ...[...new Set([...own, ...about])].map((id) => ({ kind: "proposal", sequence, id }) as const),
  ];
}
