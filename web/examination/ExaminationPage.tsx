import { useSuspenseQuery } from "@apollo/client/react";
import { memo, useEffect, useMemo } from "react";
import type { ChangedSinceFieldsFragment } from "#web/answers/ChangedSince.graphql.ts";
import { lookedOn, markLooked } from "#web/answers/last-looked.ts";
import { NotFoundPage } from "#web/shared/ui/NotFoundPage.tsx";
import type { ExaminationFieldsFragment } from "./Examination.graphql.ts";
import { ExaminationPageDocument } from "./ExaminationPage.graphql.ts";
import { ExaminationView } from "./ExaminationView.tsx";
import { readExamination } from "./read-answer.ts";
import type { AccessFieldsFragment } from "./SeenBy.graphql.ts";

/** One piece: what is claimed of it, what was seen, and what follows. */
export function ExaminationPage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(ExaminationPageDocument, {
    variables: { id, since: lookedOn(id) ?? null },
    // The page keeps the examination itself: it passes by the client's cache, which would take apart and put together
    // again some hundred claims.
    fetchPolicy: "no-cache",
  });
  if (!data.examination) return <NotFoundPage what="examination" id={id} />;
  return (
    <Opened
      key={data.examination.id}
      given={data.examination}
      changed={data.examination.standing.changedSince}
      access={data.examination.access}
    />
  );
}

/** Reads the examination once when it is opened; from then on the page keeps it itself. */
const Opened = memo(
  function Opened({
    given,
    changed,
    access,
  }: {
    given: ExaminationFieldsFragment;
    changed: ChangedSinceFieldsFragment | null;
    access: AccessFieldsFragment | null;
  }) {
    const opened = useMemo(() => readExamination(given), [given]);
    const { id, answer } = opened;
    useEffect(() => {
      if (answer.kind === "examined") markLooked(id, answer.revision);
    }, [id, answer]);
    return <ExaminationView opened={opened} changed={changed} access={access} />;
  },
  (before, after) => before.given.id === after.given.id,
);
