import type { Examination } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { noExamination } from "../../domain/next-version.ts";
import { type Caller, sharesTheHouse } from "../../domain/people/caller.ts";
import {
  ACCESS_CARD,
  accessOf,
  accessWrite,
  isKept,
  KEPT,
  keptButSeenBy,
} from "../../domain/people/examination-access.ts";
import {
  type Along,
  LARGEST_PAGE,
  type LeftOut,
  type Page,
  type PageAsk,
  type Store,
} from "../../ports/store.ts";
import { hiddenFrom } from "./hidden-from.ts";

/**
 * The same store as far as a caller may see its examinations (C25): others are as if they were not there, to reads, lists, counts and
 * writes. Whoever uses a house alone, and what the program does by itself, has the store as it is.
 */
export function shownStore(store: Store, caller: Caller | undefined): Store {
  if (caller && !sharesTheHouse(caller)) return store;
  const isHidden = async (id: ExaminationId) => (await hiddenFrom(store, caller, [id])).has(id);
  const shown: Partial<Store> = {
    examination: async (id, version) => ((await isHidden(id)) ? undefined : store.examination(id, version)),
    listExaminations: (page) => listShown(store, caller, page),
    changeExamination: async (id, ...rest) =>
      (await isHidden(id)) ? noExamination(id) : store.changeExamination(id, ...rest),
    deleteExamination: async (id, version, at, along) =>
      (await isHidden(id))
        ? noExamination(id)
        : store.deleteExamination(id, version, at, await listing(store, id, false, along)),
    undoExamination: async (id, version, at, along) => {
      if (await isHidden(id)) return noExamination(id);
      const isBack = (await store.examination(id))?.deleted === true;
      return store.undoExamination(id, version, at, isBack ? await listing(store, id, true, along) : along);
    },
  };
  return new Proxy(store, {
    get: (target, name) =>
      Object.hasOwn(shown, name) ? Reflect.get(shown, name) : Reflect.get(target, name, target),
  });
}

/** With the card that counts an examination among those in the lists, or no more. */
async function listing(
  store: Store,
  id: ExaminationId,
  isListed: boolean,
  along: Along = {},
): Promise<Along> {
  const card = await store.card(ACCESS_CARD, id);
  const access = card && accessOf(card);
  if (card === undefined || access === undefined || !isKept(access)) return along;
  return { ...along, cards: [...(along.cards ?? []), accessWrite(id, card.version, access, isListed)] };
}

/** A page of those that are shown. The store leaves out what is kept; what else is hidden is left out here. */
async function listShown(
  store: Store,
  caller: Caller | undefined,
  { first, after }: PageAsk,
): Promise<Page<Examination>> {
  const leftOut: LeftOut = {
    ...{ kind: ACCESS_CARD, by: KEPT },
    ...(caller === undefined ? {} : { unless: keptButSeenBy(caller.id) }),
  };
  const found: { readonly row: Examination; readonly cursor: string }[] = [];
  let page = await store.listExaminations({ first, ...(after === undefined ? {} : { after }) }, leftOut);
  const { total } = page;
  for (;;) {
    const hidden = await hiddenFrom(
      store,
      caller,
      page.rows.map(({ id }) => id),
    );
    for (const [i, row] of page.rows.entries())
      if (!hidden.has(row.id)) found.push({ row, cursor: page.cursors[i] ?? "" });
    const last = page.cursors.at(-1);
    // One more than asked for tells whether there are more; where nothing else was hidden, the store has told.
    if (found.length > first || !page.hasMore || last === undefined) break;
    if (found.length === page.rows.length && found.length === first) return page;
    page = await store.listExaminations({ first: LARGEST_PAGE, after: last }, leftOut);
  }
  const told = found.slice(0, first);
  return {
    rows: told.map(({ row }) => row),
    cursors: told.map(({ cursor }) => cursor),
    hasMore: found.length > first,
    total,
  };
}
