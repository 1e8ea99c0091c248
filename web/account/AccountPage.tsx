import { Link } from "wouter";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import styles from "./account.module.css";
import { askAccount, type Caller, type Who } from "./ask-account.ts";
import { Elsewhere } from "./Elsewhere.tsx";
import { hasPasskeys } from "./has-passkeys.ts";
import { NewPassword } from "./NewPassword.tsx";
import { NewToken } from "./NewToken.tsx";
import { Passkeys } from "./Passkeys.tsx";
import { SecondStep } from "./SecondStep.tsx";
import { useAsked } from "./use-asked.ts";

interface Mine {
  readonly name: string;
  readonly signInName: string;
  readonly hasDevice: boolean;
  readonly recoveryCodes: number;
  readonly passkeys: readonly { id: string; label: string; madeAt: string }[];
  readonly linked: readonly { id: string; issuer: string; linkedAt: string }[];
  readonly sessions: readonly { id: string; isThis: boolean; madeAt: string; seenAt: string }[];
  readonly tokens: readonly { id: string; label: string; role: string; until: string }[];
}

/** One's own account: what gets in for it, and its password. */
export function AccountPage() {
  const { answer } = useAsked<Who>("who");
  if (answer === undefined) return <Waiting what="your account" isPage />;
  if ("done" in answer && !answer.done.accounts) return <NoAccounts />;
  const { caller, provider } = "done" in answer ? answer.done : { caller: null };
  return (
    <OwnAccount
      role={caller?.role ?? "reader"}
      isHeld={caller?.isHeld === true}
      provider={provider ?? undefined}
    />
  );
}

const NoAccounts = () => (
  <article className={styles["page"]}>
    <PageHeading title="Your account">There are no accounts here</PageHeading>
    <p className={styles["note"]}>
      Scribeline runs for this machine alone, and whoever sits at it is its owner. Where several share a
      house, it is started with SCRIBELINE_ACCOUNTS=on.
    </p>
  </article>
);

function OwnAccount({
  role,
  ...who
}: {
  role: Caller["role"];
  isHeld: boolean;
  provider: string | undefined;
}) {
  const { answer, again } = useAsked<Mine>("mine");
  if (answer === undefined) return <Waiting what="your account" isPage />;
  if ("refused" in answer) return <Refusals answer={answer} />;
  const { name, signInName, sessions, tokens, linked, passkeys, ...second } = answer.done;
  const isHeld = who.isHeld && !second.hasDevice && passkeys.length === 0;
  const end = async (action: string, id: string) => {
    await askAccount(action, { id });
    await again();
  };
  return (
    <article className={styles["page"]}>
      <PageHeading title="Your account">{name}</PageHeading>
      <p className={styles["note"]}>
        You sign in as {signInName}, and are {role} in this house. <Link href="/people">The people</Link>
        {role === "owner" ? (
          <>
            {" · "}
            <Link href="/audit">The audit</Link>
          </>
        ) : null}
      </p>
      {isHeld ? (
        <p role="status" className={styles["refusal"]}>
          In this house your role asks for a second step when you sign in. Add a device below; until then you
          can read, and no more.
        </p>
      ) : null}
      <Button
        onPress={async () => {
          await askAccount("sign-out");
          window.location.assign("/sign-in");
        }}
      >
        Sign out
      </Button>
      <section className={styles["section"]} aria-labelledby="sessions">
        <h2 id="sessions">Where you are signed in</h2>
        <ul className={styles["list"]}>
          {sessions.map(({ id, isThis, madeAt, seenAt }) => (
            <li key={id} className={styles["item"]}>
              <span>
                since {sayDay(madeAt)}, last used {new Date(seenAt).toLocaleString("en-GB")}
                {isThis ? " (here)" : ""}
              </span>
              {isThis ? null : (
                <Button look="quiet" onPress={() => end("end-session", id)}>
                  End
                </Button>
              )}
            </li>
          ))}
        </ul>
      </section>
      <section className={styles["section"]} aria-labelledby="tokens">
        <h2 id="tokens">Tokens for scripts</h2>
        <ul className={styles["list"]}>
          {tokens.map(({ id, label, role: of, until }) => (
            <li key={id} className={styles["item"]}>
              <span>
                {label}{" "}
                <span className={styles["beside"]}>
                  as {of}, until {sayDay(until)}
                </span>
              </span>
              <Button
                look="quiet"
                onPress={() => end("take-back-token", id)}
                aria-label={`Take back ${label}`}
              >
                Take back
              </Button>
            </li>
          ))}
        </ul>
        {role === "reader" || isHeld ? null : <NewToken most={role} onMade={again} />}
      </section>
      <section className={styles["section"]} aria-labelledby="password">
        <h2 id="password">Password</h2>
        <NewPassword signInName={signInName} needsCode={second.hasDevice} />
      </section>
      <SecondStep {...second} onChanged={again} />
      {hasPasskeys() ? <Passkeys passkeys={passkeys} needsCode={second.hasDevice} onChanged={again} /> : null}
      {who.provider ? (
        <Elsewhere {...{ linked, provider: who.provider, needsCode: second.hasDevice }} onChanged={again} />
      ) : null}
    </article>
  );
}
