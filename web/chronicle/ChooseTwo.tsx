import { useState } from "react";
import { useLocation } from "wouter";
import { Button } from "../shared/ui/Button.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./chronicle.module.css";
import { addressOfDifference, type Two } from "./two-revisions.ts";

/** Asks for two revisions to compare. */
export function ChooseTwo({ two, newest }: { two: Two | undefined; newest: number }) {
  const [, navigate] = useLocation();
  const [from, setFrom] = useState(String(two?.from ?? Math.max(0, newest - 1)));
  const [to, setTo] = useState(String(two?.to ?? newest));
  const isSound = (text: string) => /^\d{1,9}$/.test(text.trim()) && Number(text) <= newest;
  const refusal = isSound(from) && isSound(to) ? undefined : `Two numbers from 0 to ${newest} are wanted.`;
  return (
    <form
      className={styles["acts"]}
      onSubmit={(event) => {
        event.preventDefault();
        if (refusal === undefined) navigate(addressOfDifference(Number(from), Number(to)));
      }}
    >
      <TextField label="From revision" value={from} onChange={setFrom} inputMode="numeric" />
      <TextField label="To revision" value={to} onChange={setTo} inputMode="numeric" />
      <Button type="submit" isDisabled={refusal !== undefined}>
        Compare
      </Button>
      <p role="status" className={styles["beside"]}>
        {refusal}
      </p>
    </form>
  );
}
