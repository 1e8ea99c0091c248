import { useState } from "react";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { useFetched } from "#web/shared/ui/use-fetched.ts";
import { sayPerson } from "#web/shared/words/say-person.ts";
import type { AccessFieldsFragment } from "./SeenBy.graphql.ts";

const loadFields = () => import("./SeenByFields.tsx");

/** Who sees the piece, as it was when it was opened, and for whoever recorded it the way to say so. */
export function SeenBy({ id, opened }: { id: string; opened: AccessFieldsFragment }) {
  const [access, setAccess] = useState(opened);
  const SeenByFields = useFetched(loadFields)?.SeenByFields;
  const says = `Seen by: ${sayWho(access)}`;
  if (!access.isYours) return <p>{says}</p>;
  return (
    <Disclosure level={2} summary={says}>
      {SeenByFields ? <SeenByFields key={says} {...{ id, access }} onSaid={setAccess} /> : null}
    </Disclosure>
  );
}

function sayWho({ isYours, by, seenBy }: AccessFieldsFragment): string {
  if (seenBy === null) return "the whole house";
  const others = seenBy.map(sayPerson);
  if (isYours) return others.length === 0 ? "me alone" : `me and ${others.join(", ")}`;
  return [sayPerson(by), ...others].join(", ");
}
