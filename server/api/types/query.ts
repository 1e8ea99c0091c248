import { GraphQLError } from "graphql";
import { id } from "../../domain/ids.ts";
import type { TermKind } from "../../domain/term.ts";
import { LARGEST_PAGE, type SearchFilter } from "../../ports/store.ts";
import { examinePiece } from "../../use-cases/ask/examine-piece.ts";
import { findDisagreements, listDisagreementRules } from "../../use-cases/ask/find-disagreements.ts";
import { findExamination } from "../../use-cases/ask/find-examination.ts";
import { findRevision } from "../../use-cases/ask/find-revision.ts";
import { listClaims } from "../../use-cases/ask/list-claims.ts";
import { listExaminations } from "../../use-cases/ask/list-examinations.ts";
import { listRevisions } from "../../use-cases/ask/list-revisions.ts";
import { listSources } from "../../use-cases/ask/list-sources.ts";
import { listTerms } from "../../use-cases/ask/list-terms.ts";
import { searchTerms } from "../../use-cases/ask/search-terms.ts";
import { percentMade } from "../../use-cases/ask/surveys/surveyed-soon.ts";
import { weighPiece } from "../../use-cases/ask/weigh-piece.ts";
import { asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { connectionFrom } from "../connection.ts";
import { findNode } from "../find-node.ts";
import {
  DISAGREEMENTS_WEIGHT,
  EXAMINE_WEIGHT,
  REGION_WEIGHT,
  WEIGH_WEIGHT,
} from "../limits/operation-cost.ts";
import { withPiece } from "../piece-from-input.ts";
import { readOn } from "../read-on.ts";
import { pageAsk, readPage, readPageOn } from "../read-page.ts";
import { termOrItsId } from "../term-or-its-id.ts";
import type { PieceInputRef } from "./piece-input.ts";
import { type RegionTypes, readCounts, readProfiles } from "./region.ts";

/** Regions that can be laid side by side. */
const MOST_COMPARED = 3;

const AS_OF = "Number of a revision; none is the newest.";

interface SearchArgs {
  readonly kinds?: readonly TermKind[] | null | undefined;
  readonly part?: string | null | undefined;
  readonly region?: string | null | undefined;
  readonly from?: number | null | undefined;
  readonly to?: number | null | undefined;
}

const filterOf = ({ kinds, part, region, from, to }: SearchArgs): SearchFilter => ({
  ...(kinds ? { kinds } : {}),
  ...(part ? { part: id(part) } : {}),
  ...(region ? { region: id(region) } : {}),
  ...(typeof (from ?? to) === "number"
    ? { years: [from ?? Number.NEGATIVE_INFINITY, to ?? Number.POSITIVE_INFINITY] }
    : {}),
});

/** Everything that can be asked. */
export function addQuery(b: Builder, pieceInput: PieceInputRef, regionTypes: RegionTypes) {
  b.objectType("SearchHit", {
    fields: (t) => ({
      term: t.field({ type: "Term", resolve: (hit, _, context) => termOrItsId(context, hit.term) }),
      score: t.exposeFloat("score"),
    }),
  });
  b.queryType({
    fields: (t) => ({
      node: t.field({
        type: "Node",
        nullable: true,
        args: { id: t.arg.id({ required: true }) },
        resolve: (_, args, context) => findNode(context, args.id),
      }),
      revision: t.field({
        description: "The newest revision, or the one of a number; null if there is none.",
        type: "Revision",
        nullable: true,
        args: { number: t.arg.int() },
        resolve: (_, { number }, context) => findRevision(context, number ?? undefined),
      }),
      revisions: t.field({
        description: "Newest first.",
        type: b.connections.revisions,
        args: b.pageOf(20),
        resolve: (_, args, context) => readPage(args, (page) => listRevisions(context, page)),
      }),
      term: t.field({
        description: "Null if there is no such term on that revision.",
        type: "Term",
        nullable: true,
        args: { id: t.arg.id({ required: true }), revision: t.arg.int({ description: AS_OF }) },
        resolve: async (_, args, context) =>
          context.load.terms.one(id(args.id), await readOn(context, args.revision)),
      }),
      terms: t.field({
        type: b.connections.terms,
        args: {
          kinds: t.arg({ type: [b.enums.termKind] }),
          broader: t.arg.id(),
          revision: t.arg.int({ description: AS_OF }),
          ...b.pageOf(50),
        },
        resolve: async (_, args, context) =>
          readPageOn(await readOn(context, args.revision), args, (page, at) =>
            listTerms(
              context,
              {
                ...(args.kinds ? { kinds: args.kinds } : {}),
                ...(args.broader ? { broader: id(args.broader) } : {}),
              },
              page,
              at,
            ),
          ),
      }),
      regions: t.field({
        description:
          "Every region with how many accepted claims there are on it, by id; null while they are being counted (regionsMade).",
        extensions: { weight: REGION_WEIGHT, entries: LARGEST_PAGE },
        type: [regionTypes.count],
        nullable: true,
        args: { revision: t.arg.int({ description: AS_OF }) },
        resolve: async (_, args, context) => readCounts(context, await readOn(context, args.revision)),
      }),
      regionProfile: t.field({
        description:
          "What the graph says of a region; null if there is no such region on that revision, or while the claims on regions are being counted (regionsMade below 100).",
        extensions: { weight: REGION_WEIGHT },
        type: regionTypes.profile,
        nullable: true,
        args: { id: t.arg.id({ required: true }), revision: t.arg.int({ description: AS_OF }) },
        resolve: async (_, args, context) =>
          (await readProfiles(context, [args.id], await readOn(context, args.revision)))?.[0],
      }),
      regionProfiles: t.field({
        description:
          "Two or three regions to lay side by side, read at once; one that there is not is left out. Null while the claims on regions are being counted (regionsMade).",
        extensions: { weight: REGION_WEIGHT, entries: MOST_COMPARED },
        type: [regionTypes.profile],
        nullable: true,
        args: {
          of: t.arg.idList({ required: true, description: `At most ${MOST_COMPARED}.` }),
          revision: t.arg.int({ description: AS_OF }),
        },
        resolve: async (_, args, context) => {
          if (args.of.length > MOST_COMPARED)
            throw new GraphQLError(`At most ${MOST_COMPARED} regions are compared at once.`, {
              extensions: { code: "BAD_USER_INPUT" },
            });
          return readProfiles(context, args.of, await readOn(context, args.revision));
        },
      }),
      regionsMade: t.int({
        description:
          "How far the counting of claims on regions has come, in percent. All claims are gone through after the start, beside all else.",
        args: { revision: t.arg.int({ description: AS_OF }) },
        resolve: async (_, args, context) => {
          const at = await readOn(context, args.revision);
          return percentMade(context.surveys.regionsMade(at), () => context.surveys.regions(at));
        },
      }),
      claim: t.field({
        description: "Null if there is no such claim on that revision.",
        type: "Claim",
        nullable: true,
        args: { id: t.arg.id({ required: true }), revision: t.arg.int({ description: AS_OF }) },
        resolve: async (_, args, context) =>
          context.load.claims.one(id(args.id), await readOn(context, args.revision)),
      }),
      claims: t.field({
        type: b.connections.claims,
        args: {
          relations: t.arg({ type: [b.enums.relation] }),
          revision: t.arg.int({ description: AS_OF }),
          ...b.pageOf(50),
        },
        resolve: async (_, args, context) =>
          readPageOn(await readOn(context, args.revision), args, (page, at) =>
            listClaims(context, args.relations ? { relations: args.relations } : {}, page, at),
          ),
      }),
      source: t.field({
        description: "Null if there is no such source on that revision.",
        type: "Source",
        nullable: true,
        args: { id: t.arg.id({ required: true }), revision: t.arg.int({ description: AS_OF }) },
        resolve: async (_, args, context) =>
          context.load.sources.one(id(args.id), await readOn(context, args.revision)),
      }),
      sources: t.field({
        type: b.connections.sources,
        args: { revision: t.arg.int({ description: AS_OF }), ...b.pageOf(50) },
        resolve: async (_, args, context) =>
          readPageOn(await readOn(context, args.revision), args, (page, at) =>
            listSources(context, page, at),
          ),
      }),
      search: t.field({
        description:
          "Terms that have the words, or their beginnings, in label, other labels or note; best first. Without words, all that part, region and years admit, by label.",
        type: ["SearchHit"],
        args: {
          words: t.arg.string({ required: true }),
          kinds: t.arg({ type: [b.enums.termKind] }),
          part: t.arg.id({
            description: "Terms looked for on this kind of part, on one above it or on one below it.",
          }),
          region: t.arg.id({
            description: "Terms with a claim scoped to this region, to one above it or to one below it.",
          }),
          from: t.arg.int({
            description:
              "Terms with a dated claim that can mean a year from here on; with region, the same claim.",
          }),
          to: t.arg.int({ description: "The last of the years; none is no end." }),
          first: t.arg.int({ required: true, defaultValue: 12, description: "1 to 200." }),
        },
        resolve: (_, args, context) => searchTerms(context, args.words, filterOf(args), args.first),
      }),
      disagreementRules: t.field({
        description:
          "What is looked for in the newest revision, in the order it is read; null while it is being made (disagreementsMade).",
        extensions: { weight: DISAGREEMENTS_WEIGHT },
        type: ["DisagreementRule"],
        nullable: true,
        resolve: (_, __, context) => listDisagreementRules(context),
      }),
      disagreements: t.field({
        description:
          "What one rule finds in the newest revision, or all of them; the farthest apart first; null while it is being made.",
        extensions: { weight: DISAGREEMENTS_WEIGHT },
        type: b.connections.disagreements,
        nullable: true,
        args: { rule: t.arg.id({ description: "Id of a rule; none is all." }), ...b.pageOf(20) },
        resolve: async (_, args, context) => {
          const found = await findDisagreements(context, args.rule ?? undefined, pageAsk(args));
          return found && connectionFrom(found.page, args.after, (one) => asOf(one, found.at));
        },
      }),
      disagreementsMade: t.int({
        description:
          "How far the making of what disagrees has come, in percent. It is made of the whole graph after the start, beside all else.",
        resolve: (_, __, { surveys }) =>
          percentMade(surveys.disagreementsMade(), () => surveys.disagreements()),
      }),
      examination: t.field({
        description: "A deleted one is found too, so that it can be brought back.",
        type: "Examination",
        nullable: true,
        args: { id: t.arg.id({ required: true }) },
        resolve: (_, args, context) => findExamination(context, id(args.id)),
      }),
      examinations: t.field({
        description: "Not the deleted ones; the one changed last first.",
        type: b.connections.examinations,
        args: b.pageOf(20),
        resolve: (_, args, context) => readPage(args, (page) => listExaminations(context, page)),
      }),
      examine: t.field({
        description: "Examines a piece without keeping it.",
        extensions: { weight: EXAMINE_WEIGHT },
        type: b.results.examine,
        args: {
          piece: t.arg({ type: pieceInput, required: true }),
          revision: t.arg.int({ description: AS_OF }),
        },
        resolve: (_, args, context) =>
          withPiece(args.piece, (piece) => examinePiece(context, piece, args.revision ?? undefined)),
      }),
      weigh: t.field({
        description:
          "Weighs a piece: what would have to be true, probabilities, rivals, what to look at next. Ask for some stages at a time; what was not through when the request ended is named as missing.",
        extensions: { weight: WEIGH_WEIGHT },
        type: b.results.weigh,
        args: {
          piece: t.arg({ type: pieceInput, required: true }),
          revision: t.arg.int({ description: AS_OF }),
          stages: t.arg({ type: [b.enums.stage], description: "All of them if none is named." }),
        },
        resolve: (_, { piece: input, stages, revision }, context) =>
          withPiece(input, (piece) =>
            weighPiece(context, piece, {
              ...(stages ? { stages } : {}),
              ...{ revision: revision ?? undefined, stop: context.stop },
            }),
          ),
      }),
    }),
  });
}
