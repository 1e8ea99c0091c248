import { id as idOf } from "../../domain/ids.ts";
import { sharesTheHouse } from "../../domain/people/caller.ts";
import { type ExaminationAccess, isKept } from "../../domain/people/examination-access.ts";
import { setExaminationAccess } from "../../use-cases/do/set-examination-access.ts";
import type { Builder } from "../builder.ts";
import type { PersonRef } from "./person.ts";

/** Who sees an examination, and the way to say so. */
export function addExaminationAccess(b: Builder, person: PersonRef) {
  const access = b.objectRef<ExaminationAccess>("ExaminationAccess").implement({
    description: "Who sees an examination where several persons share the house.",
    fields: (t) => ({
      by: t.field({ description: "Whoever recorded it.", type: person, resolve: ({ by }) => ({ id: by }) }),
      isYours: t.boolean({
        description: "You recorded it, and say who sees it.",
        resolve: ({ by }, _, { caller }) => by === caller?.id,
      }),
      seenBy: t.field({
        description: "Persons who see it besides; null is the whole house.",
        type: [person],
        nullable: true,
        resolve: (one) => (isKept(one) ? one.seenBy.map((id) => ({ id })) : null),
      }),
    }),
  });
  b.objectField("Examination", "access", (t) =>
    t.field({
      description:
        "Null where there are no accounts, and of an examination that was recorded before one could say so or came with the program: the whole house sees those.",
      type: access,
      nullable: true,
      resolve: async ({ id }, _, { caller, load }) =>
        caller && sharesTheHouse(caller) ? load.access.one(id) : null,
    }),
  );
  b.mutationFields((t) => ({
    setExaminationAccess: t.field({
      description: "Says who sees an examination; only whoever recorded it may.",
      type: b.results.change,
      args: {
        id: t.arg.id({ required: true }),
        seenBy: t.arg.idList({
          description: "Persons besides yourself; none is you alone, and left out or null the whole house.",
        }),
      },
      resolve: (_, { id, seenBy }, context) =>
        setExaminationAccess(context, idOf(id), seenBy?.map(String) ?? undefined),
    }),
  }));
}
