import type { PieceInput } from "../shared/apollo/schema-types.graphql.ts";

/** What a new examination takes over from a sheet. */
interface OfSheet {
  readonly form: { readonly id: string; readonly label: string };
  readonly region: { readonly id: string } | null;
  /** EDTF, as it was claimed. */
  readonly date: string | null;
  readonly parts: readonly {
    readonly id: string;
    readonly label: string;
    readonly broader: { readonly id: string } | null;
  }[];
}

/** A piece of the sheet's form with its expected parts and nothing seen yet. A part stands within the one around it, if that is expected too. */
export function pieceFromSheet({ form, region, date, parts }: OfSheet, thisYear: number): PieceInput {
  const expected = new Set(parts.map(({ id }) => id));
  return {
    title: capitalise(form.label),
    examined: thisYear,
    attribution: {
      // Nothing claimed: made at any time up to now.
      date: date ?? `../${thisYear}`,
      form: form.id,
      ...(region ? { region: region.id } : {}),
    },
    parts: parts.map(({ id, label, broader }) => ({
      id: partId(id),
      label: capitalise(label),
      kind: id,
      ...(broader && expected.has(broader.id) ? { within: partId(broader.id) } : {}),
    })),
    observations: [],
  };
}

const partId = (kind: string): string => kind.slice(kind.indexOf(".") + 1);
const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
