import type { Change, Edit } from "../domain/change.ts";
import type { Standing } from "../domain/graph-view.ts";
import { id } from "../domain/ids.ts";
import { namesOf } from "../domain/names-of.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Store } from "../ports/store.ts";

/**
 * Why a change that somebody proposes would not be taken: what the graph would refuse (path beginning with the number of the edit),
 * or a term that is one with another and was not named there before. What named it already may go on to.
 */
export async function unfitOf(
  store: Pick<Store, "terms" | "wouldRefuse">,
  change: Change,
): Promise<Problem | undefined> {
  return (await store.wouldRefuse(change)) ?? (await findNewlyNamed(store, change));
}

const standingOf = (kind: Edit["kind"], thing: Edit["after"]): readonly Standing[] =>
  thing === undefined ? [] : [{ kind, thing } as Standing];

/** The first term that a change names anew although it is one with another by now, as the refusal of it. */
export async function findNewlyNamed(
  store: Pick<Store, "terms">,
  change: Change,
): Promise<Problem | undefined> {
  const named = change.flatMap(({ kind, before, after }, i) => {
    const earlier = new Set(standingOf(kind, before).flatMap((one) => namesOf(one).map(({ id: of }) => of)));
    return standingOf(kind, after)
      .flatMap(namesOf)
      .filter((name) => name.kind === "term" && !earlier.has(name.id))
      .map((name) => ({ name: name.id, path: [i, "after", ...name.path] }));
  });
  if (named.length === 0) return undefined;
  const terms = await store.terms([...new Set(named.map(({ name }) => id<"term">(name)))]);
  for (const { name, path } of named) {
    const term = terms.get(id(name));
    if (!term?.merged || term.broader === undefined) continue;
    const stands = (await store.terms([term.broader])).get(term.broader);
    return problem(
      "UNKNOWN_TERM",
      `${term.label} is one with ${stands?.label ?? term.broader} by now, which stands for both; name that.`,
      path,
    );
  }
  return undefined;
}
