import { GraphQLError } from "graphql";
import type { Claim } from "../../domain/claim.ts";
import { LINK_KINDS, type Link, linkId } from "../../use-cases/ask/around/link.ts";
import {
  type Around,
  type LeftOut,
  type Member,
  MOST_NEAR,
  MOST_SHOWN,
  readAround,
} from "../../use-cases/ask/around/read-around.ts";
import { type AsOf, asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { AROUND_WEIGHT } from "../limits/operation-cost.ts";

/** Entries that the lists are taken to have, for the cost. */
const ENTRIES = { members: MOST_SHOWN, links: 100, leftOut: 20 };

/** The ends of `steps` and `each`, which make up the size of the answer. */
function readArguments({ steps, each }: { readonly steps: number; readonly each: number }) {
  const isNear = steps === 1;
  if (!(isNear || steps === 2) || each < 1 || each > MOST_NEAR)
    throw new GraphQLError(`"steps" has to be 1 or 2, and "each" from 1 to ${MOST_NEAR}.`, {
      extensions: { code: "BAD_USER_INPUT" },
    });
  return { steps: isNear ? 1 : 2, each } as const;
}

/** What stands around a term, to be drawn and to be read. */
export function addAround(b: Builder) {
  const linkKind = b.enumType("LinkKind", {
    description: "What joins two terms.",
    values: Object.fromEntries(
      LINK_KINDS.map((value) => [value.toUpperCase().replaceAll(" ", "_"), { value }]),
    ) as Record<string, { value: (typeof LINK_KINDS)[number] }>,
  });
  const first = { type: "Int", required: true } as const;
  const member = b.objectRef<AsOf<Member>>("AroundMember").implement({
    description: "A term that is shown.",
    fields: (t) => ({
      term: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ term, at }, _, { load }) => load.terms.one(term, at),
      }),
      step: t.exposeInt("step", { description: "0 for the term itself." }),
      reachedFrom: t.id({
        description: "The term that it is reached from; none for the term itself.",
        nullable: true,
        resolve: ({ reach }) => reach?.from,
      }),
      reachedBy: t.id({
        description: "The link that it is reached by.",
        nullable: true,
        resolve: ({ term, reach }) =>
          reach &&
          linkId(
            reach.isOutgoing
              ? { from: reach.from, kind: reach.kind, to: term }
              : { from: term, kind: reach.kind, to: reach.from },
          ),
      }),
      dated: t.field({
        description: "Claims with a date about it, the earliest first.",
        type: ["Claim"],
        args: { first: t.arg({ ...first, defaultValue: 4, description: "1 to 200." }) },
        resolve: ({ dated, at }, args) => marked(dated.slice(0, args.first), at),
      }),
      datedCount: t.int({ resolve: ({ dated }) => dated.length }),
    }),
  });
  const link = b.objectRef<AsOf<Link>>("AroundLink").implement({
    description: "What joins two terms that are shown, with the claims that say it.",
    fields: (t) => ({
      id: t.id({ resolve: linkId }),
      from: t.id({ resolve: (each) => each.from }),
      to: t.id({ resolve: (each) => each.to }),
      kind: t.expose("kind", { type: linkKind }),
      hardness: t.field({
        description: "None where nothing is bounded, or no claim says it.",
        type: b.enums.hardness,
        nullable: true,
        resolve: ({ hardness }) => hardness,
      }),
      claims: t.field({
        type: ["Claim"],
        args: { first: t.arg({ ...first, defaultValue: 2, description: "1 to 200." }) },
        resolve: ({ claims, at }, args) => marked(claims.slice(0, args.first), at),
      }),
      claimCount: t.int({
        description: "None: the term itself says it.",
        resolve: ({ claims }) => claims.length,
      }),
    }),
  });
  const leftOut = b.objectRef<AsOf<LeftOut>>("AroundLeftOut").implement({
    description: "Terms joined in one way to one that is shown, that are not shown.",
    fields: (t) => ({
      from: t.id({ resolve: (each) => each.from }),
      kind: t.expose("kind", { type: linkKind }),
      isOutgoing: t.exposeBoolean("isOutgoing", { description: "The links go out from `from`." }),
      count: t.int({ resolve: ({ terms }) => terms.length }),
      terms: t.field({
        type: ["Term"],
        args: { first: t.arg({ ...first, defaultValue: 20, description: "1 to 200." }) },
        resolve: ({ terms, at }, args, { load }) => load.terms.many(terms.slice(0, args.first), at),
      }),
    }),
  });
  const around = b.objectRef<AsOf<Around>>("Around").implement({
    description: "The neighbourhood of a term, as far as it is shown.",
    fields: (t) => ({
      members: t.field({
        description: "The term, then its neighbours as they are read, each followed by its own.",
        extensions: { entries: ENTRIES.members },
        type: [member],
        resolve: ({ members, at }) => members.map((each) => asOf(each, at)),
      }),
      links: t.field({
        extensions: { entries: ENTRIES.links },
        type: [link],
        resolve: ({ links, at }) => links.map((each) => asOf(each, at)),
      }),
      leftOut: t.field({
        extensions: { entries: ENTRIES.leftOut },
        type: [leftOut],
        resolve: ({ leftOut: groups, at }) => groups.map((each) => asOf(each, at)),
      }),
      unread: t.exposeInt("unread", {
        description:
          "Claims, narrower terms, features and forms that were not read, since there are so many.",
      }),
    }),
  });
  b.objectField("Term", "around", (t) =>
    t.field({
      description: "What claims and the tree of terms join it to, one step away or two.",
      extensions: { weight: AROUND_WEIGHT },
      type: around,
      args: {
        steps: t.arg.int({ required: true, defaultValue: 1, description: "1 or 2." }),
        each: t.arg.int({
          required: true,
          defaultValue: 8,
          description: `Most neighbours of one kind and side at the first step, 1 to ${MOST_NEAR}.`,
        }),
      },
      resolve: async (term, args, context) =>
        asOf(await readAround(context, term, readArguments(args), term.at), term.at),
    }),
  );
}

const marked = (claims: readonly Claim[], at: AsOf<Member>["at"]) => claims.map((claim) => asOf(claim, at));
