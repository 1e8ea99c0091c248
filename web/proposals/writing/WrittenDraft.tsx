import { useSuspenseQuery } from "@apollo/client/react";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { NotFoundPage } from "../../shared/ui/NotFoundPage.tsx";
import { resumed } from "./asked-in-form.ts";
import { WrittenDraftDocument } from "./Writing.graphql.ts";
import { WritingOf } from "./WritingOf.tsx";

const WRITABLE: readonly string[] = ["DRAFT", "CHANGES_ASKED_FOR", "OPEN"];

/** A draft of one's own, gone on with where one left it. */
export function WrittenDraft({ id, onBegun }: { id: string; onBegun: (id: string) => void }) {
  const { data } = useSuspenseQuery(WrittenDraftDocument, { variables: { id }, fetchPolicy: "network-only" });
  const { proposal } = data;
  if (!proposal?.isMine) return <NotFoundPage what="draft of yours" id={id} />;
  if (!proposal.form || !WRITABLE.includes(proposal.state))
    return (
      <p>
        This one is not written in a form any more. <TextLink to={`/house/proposals/${id}`}>Read it</TextLink>
      </p>
    );
  const { kind, fields } = resumed(proposal.kind, proposal.form);
  return (
    <WritingOf
      kind={kind}
      begun={{ id, version: proposal.version, isOpen: proposal.state === "OPEN" }}
      start={{ fields, title: proposal.title, why: proposal.why || fields["reason"] || "" }}
      onBegun={onBegun}
    />
  );
}
