import type { PageAsk } from "../ports/store.ts";

/** `first` and `after` as the store asks for a page. The cost rule has refused a `first` that no page can have. */
export const pageAsk = (args: {
  readonly first: number;
  readonly after?: string | null | undefined;
}): PageAsk => ({
  first: args.first,
  ...(typeof args.after === "string" ? { after: args.after } : {}),
});
