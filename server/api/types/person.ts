import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { LARGEST_PAGE } from "../../ports/store.ts";
import type { Builder } from "../builder.ts";

/** Whoever did something in the house, by id; the name is told as long as there is one. */
export function addPerson(b: Builder) {
  const person = b.objectRef<{ readonly id: string }>("Person").implement({
    description: "Whoever did something in this house.",
    fields: (t) => ({
      id: t.exposeID("id"),
      name: t.string({
        description:
          "As the others see it; null for whoever sits at a machine of their own, and where it was taken away.",
        nullable: true,
        resolve: async ({ id }, _, { load }) => (await load.people.one(id))?.name,
      }),
    }),
  });
  b.queryFields((t) => ({
    people: t.field({
      description: `Persons who are let in and can be called by a comment; ${LARGEST_PAGE} at the most.`,
      type: [person],
      resolve: async (_, __, { store }) => {
        const { rows } = await store.listCards({ kind: PERSON_CARD }, { first: LARGEST_PAGE });
        return rows.map(personOf).filter((one) => one?.state === "active") as { id: string }[];
      },
    }),
  }));
  return person;
}
export type PersonRef = ReturnType<typeof addPerson>;
