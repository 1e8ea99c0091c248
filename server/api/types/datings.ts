import type { DatingPath, Datings, FeatureDatings } from "../../domain/datings.ts";
import { findDatings } from "../../use-cases/ask/find-datings.ts";
import type { Builder } from "../builder.ts";
import { EXAMINE_WEIGHT } from "../limits/operation-cost.ts";
import { withPiece } from "../piece-from-input.ts";
import type { PieceInputRef } from "./piece-input.ts";

/** Every way from what was seen on a piece to what dates it. */
export function addDatings(b: Builder, pieceInput: PieceInputRef) {
  const path = b.objectRef<DatingPath>("DatingPath").implement({
    fields: (t) => ({
      via: t.idList({
        description: "The requirements that are followed, the first of the feature itself.",
        extensions: { entries: 8 },
        resolve: ({ via }) => [...via],
      }),
      dated: t.id({
        description: "The claim that bounds the years at its end.",
        resolve: ({ dated }) => dated,
      }),
      isOut: t.boolean({
        description: "If this claim holds, the claimed years are impossible.",
        resolve: ({ isOut }) => isOut,
      }),
    }),
  });
  const feature = b.objectRef<FeatureDatings>("FeatureDatings").implement({
    fields: (t) => ({
      feature: t.id({ resolve: ({ feature }) => feature }),
      label: t.field({
        description: "Whether some way leaves the claimed years no room, none does, or there is none.",
        type: b.enums.datingLabel,
        resolve: ({ label }) => label,
      }),
      paths: t.field({
        description: "By the ids of the claims along them; where a way ends, before what leads on.",
        type: [path],
        extensions: { entries: 20 },
        resolve: ({ paths }) => paths,
      }),
    }),
  });
  const datings = b.objectRef<Datings>("Datings").implement({
    description:
      "Every single way from what was seen to a date, before exceptions and nearer claims are weighed.",
    fields: (t) => ({
      revision: t.int({ resolve: ({ revision }) => revision }),
      features: t.field({
        description: "What was seen, each feature once.",
        type: [feature],
        extensions: { entries: 20 },
        resolve: ({ features }) => features,
      }),
      isCut: t.boolean({
        description: "There are too many ways to list them all.",
        resolve: ({ isCut }) => isCut,
      }),
    }),
  });
  const result = b.unionType("DatingsResult", {
    types: [datings, "Refused"],
    resolveType: (result) => ("refused" in result ? "Refused" : "Datings"),
  });
  b.queryField("datings", (t) =>
    t.field({
      description: "Every way from what was seen on a piece to what dates it.",
      extensions: { weight: EXAMINE_WEIGHT },
      type: result,
      args: {
        piece: t.arg({ type: pieceInput, required: true }),
        revision: t.arg.int({ description: "Number of a revision; none is the newest." }),
      },
      resolve: (_, args, context) =>
        withPiece(args.piece, (piece) => findDatings(context, piece, args.revision ?? undefined)),
    }),
  );
}
