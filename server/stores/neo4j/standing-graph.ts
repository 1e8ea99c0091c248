import { createHash } from "node:crypto";
import { textsOf } from "../../chain/change-text.ts";
import type { Change, Edit } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import { type GraphView, idOfEdit, type Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";

/** A graph in memory that changes are laid on, one after the other. */
export interface StandingGraph {
  readonly view: GraphView;
  apply(change: Change): void;
}

/**
 * An empty graph. Of each thing it keeps no more than a check of the next change asks for, some 300 bytes: a digest to tell
 * whether it stands as it is said to, its kind, what is above it, what it is an exception of, and who names it.
 */
export function standingGraph(): StandingGraph {
  const digests = new Map<string, string>();
  const terms = new Map<string, Term>();
  const exceptions = new Map<string, string>();
  const namers = new Map<string, string[]>();
  const stubOf = (key: string): Standing => {
    const [kind, id] = key.split(" ");
    return { kind, thing: { id } } as Standing;
  };
  const unname = (key: string, before: Standing): void => {
    for (const named of namesOf(before)) {
      const keys = namers.get(keyOf(named.kind, named.id)) ?? [];
      const at = keys.lastIndexOf(key);
      if (at >= 0) keys.splice(at, 1);
    }
  };
  const name = (key: string, after: Standing): void => {
    for (const named of namesOf(after)) {
      const by = keyOf(named.kind, named.id);
      const keys = namers.get(by);
      if (keys) keys.push(key);
      else namers.set(by, [key]);
    }
  };
  return {
    view: {
      findTerm: (id) => terms.get(id),
      findClaim: (id) => {
        if (!digests.has(keyOf("claim", id))) return undefined;
        const of = exceptions.get(id);
        return { id, ...(of === undefined ? {} : { relation: "void when", of }) } as Claim;
      },
      findSource: (id) => (digests.has(keyOf("source", id)) ? ({ id } as Source) : undefined),
      namersOf: (kind, id) => [...new Set(namers.get(keyOf(kind, id)))].map(stubOf),
      stands: (kind, id, text) =>
        digests.get(keyOf(kind, id)) === (text === undefined ? undefined : digestOf(text)),
    },
    apply: (change) => {
      const texts = textsOf(change);
      for (const [at, edit] of change.entries()) {
        const { kind, before, after } = edit;
        const id = idOfEdit(edit);
        const key = keyOf(kind, id);
        if (before) {
          unname(key, { kind, thing: before } as Standing);
          if (kind === "term") terms.delete(id);
          if (kind === "claim") exceptions.delete(id);
          digests.delete(key);
        }
        if (!after) continue;
        name(key, { kind, thing: after } as Standing);
        digests.set(key, digestOf(texts.after[at] ?? ""));
        if (kind === "term") terms.set(id, termOf(after));
        else if (kind === "claim" && after.relation === "void when") exceptions.set(id, after.of);
      }
    },
  };
}

const keyOf = (kind: Edit["kind"], id: string): string => `${kind} ${id}`;

const digestOf = (text: string): string =>
  createHash("sha256").update(text, "utf8").digest("base64").slice(0, 22);

const termOf = ({ id, kind, broader }: Term): Term =>
  ({ id, kind, ...(broader === undefined ? {} : { broader }) }) as Term;
