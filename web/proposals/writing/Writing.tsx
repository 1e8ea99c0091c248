import { useMemo, useRef, useState } from "react";
import { useLocation } from "wouter";
import type { Edit } from "#server/domain/change.ts";
import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { focusFirstRefused } from "#web/shared/ui/focus-first-refused.ts";
import { TextField } from "#web/shared/ui/TextField.tsx";
import styles from "../proposals.module.css";
import { askedIn, wrongIn } from "./asked-in-form.ts";
import { DraftStanding } from "./DraftStanding.tsx";
import { FormOfKind } from "./FormOfKind.tsx";
import { type FormDesk, FormDeskContext, OF_EXCEPTION } from "./form-desk.ts";
import { formToSend } from "./form-to-send.ts";
import type { WritingKind } from "./kinds.ts";
import { readLocalCopy, type Written } from "./local-copy.ts";
import { ReadBack } from "./ReadBack.tsx";
import { titleOfForm } from "./title-of-form.ts";
import { type Place, useDraft } from "./use-draft.ts";
import { useLookOver } from "./use-look-over.ts";
import own from "./writing.module.css";

interface Props {
  kind: WritingKind;
  begun: Place | undefined;
  start: Written;
  /** What is put right. */
  standing: Edit | undefined;
  onBegun: (id: string) => void;
}

/** A form, what it says, and what becomes of it. */
export function Writing({ kind, begun, start, standing, onBegun }: Props) {
  const [, navigate] = useLocation();
  const called = [kind.kind, ...(start.fields["about"] ? [start.fields["about"]] : [])].join(" ");
  const local = useMemo(() => readLocalCopy(begun?.id ?? called), [begun?.id, called]);
  const isFilled = Object.keys(start.fields).length > 0 && standing === undefined;
  // What was kept here and never sent goes on where it was made on the version that stands.
  const isLocal =
    local !== undefined && local.version === (begun?.version ?? 0) && (begun !== undefined || !isFilled);
  const [written, setWritten] = useState<Written>(isLocal ? local : start);
  const [unsent, setUnsent] = useState<Written | undefined>(isLocal ? undefined : local);
  const [touched, setTouched] = useState<ReadonlySet<string>>(new Set());
  const [hasTried, setHasTried] = useState(begun !== undefined);
  const asked = askedIn(kind, written.fields);
  const wrong = kind.id === "correction" ? wrongIn(written.fields) : undefined;
  const isAsked = kind.id !== "correction" || wrong !== undefined;
  const sent = useMemo(
    () => formToSend(asked, written.fields, written.why),
    [asked, written.fields, written.why],
  );
  const { looked, lookNow } = useLookOver(asked, sent);
  const line = titleOfForm(asked, wrong, looked?.edits ?? []);
  const draft = useDraft(asked, called, begun, start, written, looked?.change ?? []);
  const sheet = useRef<HTMLDivElement>(null);
  const desk: FormDesk = {
    fields: written.fields,
    put: (fields) => {
      setWritten((before) => ({ ...before, fields: { ...before.fields, ...fields } }));
      setTouched((before) => new Set([...before, ...Object.keys(fields)]));
    },
    refusalAt: (field) =>
      hasTried || touched.has(field)
        ? looked?.problems.find(({ path }) => placeInForm(asked, path[0]) === field)?.message
        : undefined,
  };
  const hand = async (how: "open" | "keep") => {
    setHasTried(true);
    // The form as it is now, not as it was when the last answer came.
    const now = await lookNow();
    if (!now?.change || (how === "open" && written.why.trim() === "")) {
      requestAnimationFrame(() => focusFirstRefused(sheet.current));
      return;
    }
    const whole = { change: now.change, line: titleOfForm(asked, wrong, now.edits) };
    const place = await (how === "open" ? draft.open(whole) : draft.keep(whole));
    if (!place) return;
    onBegun(place.id);
    navigate(`/house/proposals/${place.id}`);
  };
  return (
    <FormDeskContext value={desk}>
      <div className={own["sheet"]} ref={sheet}>
        <div className={own["fields"]}>
          {unsent === undefined ? null : (
            <p>
              Something was written here and never sent.{" "}
              <Button
                onPress={() => {
                  setWritten(unsent);
                  setUnsent(undefined);
                }}
              >
                Go on with that
              </Button>
            </p>
          )}
          <FormOfKind kind={kind} standing={standing} />
        </div>
        {isAsked ? <ReadBack looked={looked} isTouched={hasTried || touched.size > 0} /> : null}
        {isAsked ? (
          <div className={own["fields"]}>
            <h2>For those who decide</h2>
            <TextField
              label="Why the evidence should change"
              value={written.why}
              onChange={(why) => setWritten((before) => ({ ...before, why }))}
              hint="What you saw or read, and where."
              lines={4}
              maxLength={5000}
              {...(hasTried && written.why.trim() === ""
                ? { refusal: "Say why, so that others can decide." }
                : {})}
            />
            <Disclosure summary="Give it a name of your own" isOpenAtFirst={written.title !== ""}>
              <TextField
                label="In a few words"
                value={written.title}
                onChange={(title) => setWritten((before) => ({ ...before, title }))}
                placeholder={line || "what it is"}
                hint="Left empty, it is what the sentence says."
                maxLength={200}
              />
            </Disclosure>
            <div className={styles["acts"]}>
              {begun?.isOpen ? null : (
                <Button look="main" onPress={() => void hand("open")}>
                  Hand it to the reviewers
                </Button>
              )}
              <Button onPress={() => void hand("keep")}>
                {begun?.isOpen ? "Keep it as it is now" : "See what it would change"}
              </Button>
            </div>
            <DraftStanding draft={draft} onBegun={onBegun} />
          </div>
        ) : null}
      </div>
    </FormDeskContext>
  );
}

/** Where a problem of what was sent stands in the form. */
const placeInForm = (asked: ProposalKind, field: string | undefined): string | undefined =>
  asked === "EXCEPTION" && field !== undefined ? `${OF_EXCEPTION}${field}` : field;
