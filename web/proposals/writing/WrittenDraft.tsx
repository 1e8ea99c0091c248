import { useSuspenseQuery } from "@apollo/client/react";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { NotFoundPage } from "../../shared/ui/NotFoundPage.tsx";
import { WRITING_KINDS } from "./kinds.ts";
import { WrittenDraftDocument } from "./Writing.graphql.ts";
import { Writing } from "./Writing.tsx";

/** A draft of one's own, gone on with where one left it. */
export function WrittenDraft({ id, onBegun }: { id: string; onBegun: (id: string) => void }) {
  const { data } = useSuspenseQuery(WrittenDraftDocument, { variables: { id }, fetchPolicy: "network-only" });
  const { proposal } = data;
  if (!proposal?.isMine) return <NotFoundPage what="draft of yours" id={id} />;
  if (
    !proposal.form ||
    (proposal.state !== "DRAFT" && proposal.state !== "CHANGES_ASKED_FOR" && proposal.state !== "OPEN")
  )
    return (
      <p>
        This one is not written in a form any more. <TextLink to={`/house/proposals/${id}`}>Read it</TextLink>
      </p>
    );
  const kind = WRITING_KINDS.find((one) => one.kind === proposal.kind) ?? WRITING_KINDS[0];
  return (
    <Writing
      kind={kind}
      begun={{ id, version: proposal.version, isOpen: proposal.state === "OPEN" }}
      start={{ fields: proposal.form, title: proposal.title, why: proposal.why }}
      onBegun={onBegun}
    />
  );
}
