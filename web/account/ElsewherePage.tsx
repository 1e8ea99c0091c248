import { useEffect, useRef, useState } from "react";
import { Link } from "wouter";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import styles from "./account.module.css";
import type { Answered } from "./ask-account.ts";
import { comeBack } from "./go-elsewhere.ts";

/** Where the browser comes back to from the other provider, and goes on from. */
export function ElsewherePage() {
  const [answer, setAnswer] = useState<Answered<unknown>>();
  const hasBegun = useRef(false);
  useEffect(() => {
    // What was kept serves once, also where effects run twice.
    if (hasBegun.current) return;
    hasBegun.current = true;
    comeBack().then(({ answer: came, to }) => {
      if ("done" in came) window.location.replace(to);
      else setAnswer(came);
    });
  }, []);
  return (
    <article className={styles["page"]}>
      <PageHeading title="Sign in">{answer ? "That did not sign you in" : "Signing you in"}</PageHeading>
      <Refusals answer={answer} />
      {answer ? (
        <p>
          <Link href="/sign-in">Sign in</Link>
        </p>
      ) : null}
    </article>
  );
}
