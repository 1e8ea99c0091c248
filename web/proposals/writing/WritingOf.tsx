import { skipToken, useSuspenseQuery } from "@apollo/client/react";
import type { Change } from "#server/domain/change.ts";
import { fieldsOfClaim } from "#server/domain/proposals/form/fields-of-claim.ts";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import { fieldsOfSource } from "#server/domain/proposals/form/source-of-fields.ts";
import { fieldsOfTerm } from "#server/domain/proposals/form/term-of-fields.ts";
import { NotFoundPage } from "../../shared/ui/NotFoundPage.tsx";
import { FindWhatIsWrong } from "./FindWhatIsWrong.tsx";
import type { WritingKind } from "./kinds.ts";
import type { Written } from "./local-copy.ts";
import { StandingThing } from "./StandingThing.tsx";
import type { Place } from "./use-draft.ts";
import { ToBeCorrectedDocument } from "./Writing.graphql.ts";
import { Writing } from "./Writing.tsx";

interface Props {
  kind: WritingKind;
  begun: Place | undefined;
  start: Written;
  onBegun: (id: string) => void;
}

/** A form, new or gone on with; of a correction beside what stands, which fills its fields at first. */
export function WritingOf({ kind, begun, start, onBegun }: Props) {
  const about = kind.id === "correction" ? start.fields["about"] : undefined;
  const { data } = useSuspenseQuery(
    ToBeCorrectedDocument,
    about === undefined ? skipToken : { variables: { id: about }, fetchPolicy: "network-only" },
  );
  if (kind.id !== "correction") return <Writing {...{ kind, begun, start, onBegun }} standing={undefined} />;
  if (about === undefined) return <FindWhatIsWrong />;
  const [standing] = data?.standing ?? [];
  if (data === undefined || standing === undefined)
    return <NotFoundPage what="claim, term or source" id={about} />;
  const fields = begun ? start.fields : { ...fieldsOf(standing), ...start.fields };
  return (
    <>
      <StandingThing named={data} />
      <Writing {...{ kind, begun, onBegun, standing }} start={{ ...start, fields }} />
    </>
  );
}

function fieldsOf(edit: Change[number]): FormFields {
  if (edit.before === undefined) return {};
  if (edit.kind === "claim") return fieldsOfClaim(edit.before);
  return edit.kind === "term" ? fieldsOfTerm(edit.before) : fieldsOfSource(edit.before);
}
