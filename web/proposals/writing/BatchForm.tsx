import { useApolloClient } from "@apollo/client/react";
import { useState } from "react";
import { useLocation } from "wouter";
import { Button } from "#web/shared/ui/Button.tsx";
import { ChooseFile } from "#web/shared/ui/ChooseFile.tsx";
import { sayFailure } from "#web/shared/ui/say-failure.ts";
import { TextField } from "#web/shared/ui/TextField.tsx";
import { useStep } from "../../shared/apollo/use-step.ts";
import styles from "../proposals.module.css";
import { Refusals } from "../Refusals.tsx";
import { BatchRows } from "./BatchRows.tsx";
import { MOST_BYTES_OF_TABLE, readTableFile } from "./read-table-file.ts";
import { BeginDraftDocument, ReadBatchDocument, type ReadBatchQuery } from "./Writing.graphql.ts";
import own from "./writing.module.css";

const EXAMPLE = `relation,subject,region,when,basis
introduced,circular saw,England,1790,from memory`;

const nameOf = (count: number) => (count === 1 ? "1 claim from a table" : `${count} claims from a table`);

/** Many claims out of a table: looked through row by row, then one proposal of all, or nothing. */
export function BatchForm() {
  const client = useApolloClient();
  const [, navigate] = useLocation();
  const [text, setText] = useState("");
  const [why, setWhy] = useState("");
  const [title, setTitle] = useState("");
  const [refusal, setRefusal] = useState<string>();
  const [read, setRead] = useState<ReadBatchQuery["readBatch"]>();
  const [isReading, setIsReading] = useState(false);
  const step = useStep(BeginDraftDocument);
  const look = async (table: string) => {
    setRead(undefined);
    setRefusal(undefined);
    if (table.length > MOST_BYTES_OF_TABLE) return setRefusal("The table is larger than 100 kB; divide it.");
    setIsReading(true);
    try {
      const { data } = await client.query({
        query: ReadBatchDocument,
        variables: { text: table },
        fetchPolicy: "no-cache",
      });
      setRead(data?.readBatch);
    } catch (failure) {
      const { what, next } = sayFailure(failure);
      setRefusal(`${what} ${next}`);
    }
    setIsReading(false);
  };
  const make = async () => {
    if (!read?.change) return;
    const input = {
      kind: "CLAIM" as const,
      title: title.trim() || nameOf(read.rows.length),
      why,
      change: read.change,
      base: null,
      form: null,
    };
    const given = (await step.take({ input, open: false })) as { proposal?: { id: string } } | undefined;
    if (given?.proposal) navigate(`/house/proposals/${given.proposal.id}`);
  };
  return (
    <div className={own["fields"]}>
      <div className={styles["acts"]}>
        <ChooseFile
          types={[".csv", ".tsv", "text/csv", "text/plain"]}
          onChoose={async (chosen) => {
            const file = await readTableFile(chosen);
            setRead(undefined);
            if ("refusal" in file) return setRefusal(file.refusal);
            setText(file.text);
            void look(file.text);
          }}
        />
        <span className={styles["beside"]}>or paste the table below</span>
      </div>
      <TextField
        label="The table, as comma-separated values"
        hint="The first line names the columns: relation and basis, then subject, region, form, part, when, source, locator, note and others (docs/formats/claims-csv.md). Terms by name or id."
        placeholder={EXAMPLE}
        lines={8}
        value={text}
        onChange={(next) => {
          setText(next);
          setRead(undefined);
        }}
        spellCheck="false"
        {...(refusal === undefined ? {} : { refusal })}
      />
      <p>
        <Button isDisabled={text.trim() === "" || isReading} onPress={() => void look(text)}>
          Look through it
        </Button>
      </p>
      {read === undefined ? null : <BatchRows read={read} />}
      {read?.change ? (
        <div className={styles["form"]}>
          <TextField
            label="In a few words"
            value={title}
            onChange={setTitle}
            maxLength={200}
            placeholder={nameOf(read.rows.length)}
          />
          <TextField
            label="Why the evidence should change"
            value={why}
            onChange={setWhy}
            lines={3}
            maxLength={5000}
            hint="Where the table comes from, and who read what."
          />
          <Refusals of={[step]} />
          <Button look="main" isDisabled={step.isUnderWay} onPress={() => void make()}>
            Make one draft of all rows
          </Button>
        </div>
      ) : null}
    </div>
  );
}
