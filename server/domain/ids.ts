/** Branded identifiers: an id of one kind cannot stand where another kind is wanted. */
export type Id<Kind extends string> = string & { readonly __kind: Kind };

export type TermId = Id<"term">;
export type ClaimId = Id<"claim">;
export type SourceId = Id<"source">;
export type ExaminationId = Id<"examination">;
export type PartId = Id<"part">;
export type ObservationId = Id<"observation">;

/** What an id may look like everywhere: letters, digits, dot, hyphen, underscore; 1 to 120 characters. */
export const ID_PATTERN = /^[A-Za-z0-9][A-Za-z0-9._-]{0,119}$/;

/** Names a plain string as an id of the wanted kind. The caller vouches that it has the form of `ID_PATTERN`. */
export const id = <Kind extends string>(text: string): Id<Kind> => text as Id<Kind>;
