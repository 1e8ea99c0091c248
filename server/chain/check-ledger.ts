import { canonicalJson } from "../domain/canonical-json.ts";
import type { Card } from "../domain/card.ts";
import type { Written, WrittenCard } from "../domain/written.ts";
import { hashOfCard, linkWritten, type MadeByWrite, noteOf } from "./link-written.ts";

/** Takes the writes of a ledger one after the other, then the cards that stand, and says the first thing that is wrong. */
export interface LedgerCheck {
  /** `made` is what the store holds of what the write says it made. */
  take(written: Written, made: MadeByWrite): string | undefined;
  takeCard(card: Card): string | undefined;
  /** When all was taken: what is missing of what the store holds, which is so many revisions and versions of examinations. */
  end(held: { readonly revisions: number; readonly versions: number }): string | undefined;
}

/** Begins to check a ledger. */
export function checkLedger(): LedgerCheck {
  let newest: Written | undefined;
  let revisions = 0;
  let versions = 0;
  const due = new Map<string, WrittenCard>();
  return {
    take: (written, made) => {
      const { sequence, content, previous, revision, examination, restored } = written;
      const linked = linkWritten(noteOf(written), made, newest);
      const before = newest;
      newest = written;
      if (sequence !== linked.sequence) return `write ${linked.sequence} of the ledger is missing`;
      if (previous !== linked.previous)
        return `write ${sequence} of the ledger does not follow from write ${before?.sequence ?? 0}`;
      if (content !== linked.content)
        return `${nameMade(written)}, which write ${sequence} of the ledger made, is not what was written`;
      if (canonicalJson(linked) !== canonicalJson(written))
        return `the fields of write ${sequence} of the ledger do not match its hash`;
      if (restored && sequence > 1)
        return `write ${sequence} of the ledger is a restore into a store that held something`;
      if (revision !== undefined && !restored && revision !== revisions + 1)
        return `write ${sequence} of the ledger does not follow from revision ${revisions}`;
      revisions = revision ?? revisions;
      versions += (examination ? 1 : 0) + (made.examinations?.length ?? 0);
      for (const card of written.cards ?? [])
        if (card.hash === undefined) due.delete(keyOf(card));
        else due.set(keyOf(card), card);
      return undefined;
    },
    takeCard: (card) => {
      const written = due.get(keyOf(card));
      due.delete(keyOf(card));
      return written?.version === card.version && written.hash === hashOfCard(card)
        ? undefined
        : `the card ${card.kind} ${card.id} is not as it was written`;
    },
    end: (held) => {
      if (held.revisions !== revisions)
        return `the ledger ends with revision ${revisions}, the store with ${held.revisions}`;
      if (held.versions !== versions)
        return `the ledger tells of ${versions} versions of examinations, the store holds ${held.versions}`;
      const [missing] = due.values();
      return missing && `the card ${missing.kind} ${missing.id} is missing`;
    },
  };
}

const nameMade = ({ revision, examination }: Written): string =>
  examination
    ? `version ${examination.version} of examination ${examination.id}`
    : revision === undefined
      ? "what came with a restore"
      : `revision ${revision}`;

const keyOf = ({ kind, id }: { readonly kind: string; readonly id: string }): string => `${kind} ${id}`;
