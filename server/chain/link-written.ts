import { canonicalJson } from "../domain/canonical-json.ts";
import type { Card } from "../domain/card.ts";
import type { Examination } from "../domain/examination.ts";
import { NO_HASH } from "../domain/revision.ts";
import type { WriteNote, Written, WrittenCard } from "../domain/written.ts";
import { sha256 } from "./sha256.ts";

/**
 * What a write made besides cards: the hash of the revision, that of the version of an examination (`hashOfVersion`); of a
 * restore the hashes of all versions, by id and version.
 */
export interface MadeByWrite {
  readonly revision?: string | undefined;
  readonly examination?: string | undefined;
  readonly examinations?: readonly string[] | undefined;
}

/** The write that comes after `newest` in the ledger, chained to it by its hash. */
export function linkWritten(
  note: WriteNote,
  made: MadeByWrite,
  newest: Pick<Written, "sequence" | "hash"> | undefined,
): Written {
  const { revision, examination, restored, cards = [], deed } = note;
  const fields = {
    sequence: (newest?.sequence ?? 0) + 1,
    ...(revision === undefined ? {} : { revision }),
    ...(examination === undefined ? {} : { examination }),
    ...(restored ? { restored } : {}),
    ...(cards.length === 0 ? {} : { cards }),
    ...(deed === undefined ? {} : { deed }),
    content: sha256(canonicalJson(made)),
    previous: newest?.hash ?? NO_HASH,
  };
  return { ...fields, hash: sha256(canonicalJson(fields)) };
}

/** What a line of the ledger says, without its place in the chain. */
export function noteOf({ sequence: _, content: __, previous: ___, hash: ____, ...note }: Written): WriteNote {
  return note;
}

/** A card as the ledger names it after it was written; `undefined` before is none, after is taken away. */
export function noteCard(before: Card | undefined, after: Card | undefined): WrittenCard {
  const { kind, id, version } = (after ?? before) as Card;
  return { kind, id, version, ...(after === undefined ? {} : { hash: hashOfCard(after) }) };
}

/** SHA-256 of a card as it stands. */
export const hashOfCard = (card: Card): string => sha256(canonicalJson(card));
/** SHA-256 of a version of an examination. */
export const hashOfVersion = (version: Examination): string => sha256(canonicalJson(version));
