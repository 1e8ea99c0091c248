import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { DatePrior } from "#server/domain/weighing/odds.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { RangeField } from "#web/shared/ui/RangeField.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import styles from "./Assumptions.module.css";
import { withChosen } from "./choose-odds.ts";
import { PartOdds } from "./PartOdds.tsx";
import { sayLeak, sayPrior, sayWrong } from "./say-odds.ts";
import { useOdds, useWeighed } from "./weighing-desk.ts";

const DATE_PRIORS: readonly { readonly id: DatePrior; readonly label: string; readonly beside?: string }[] = [
  { id: "uniform", label: "every year alike" },
  { id: "as claimed", label: "half of it within the claimed years" },
  { id: "production", label: "by how many documented pieces there are" },
];

/** Prior of "made later to look old" when it is asked for. */
const FIRST_PRIOR = 0.02;

/** What is assumed and not seen: every number can be tried with its effect at once, and kept with the piece. */
export function AssumptionsSection() {
  const { weighed } = useWeighed();
  const { odds, tryOdds, isTrial, dropTrial, keepTrial } = useOdds();
  const { headline, parts } = weighed.words;
  const wrong = odds.wrongClaims ?? 1;
  const leak = odds.leak ?? ASSUMED_ODDS.leak;
  const { madeToDeceive } = odds;
  const isChosen = Object.keys(odds).length > 0;
  return (
    <section aria-labelledby="assumed-heading" className={styles["section"]} id="assumed">
      <h2 id="assumed-heading">What is assumed, and what if it were otherwise</h2>
      <p className={styles["line"]}>
        None of these numbers is a finding. Move one and see what follows; nothing is kept until you say so.{" "}
        <TextLink to="/method">How a finding is made</TextLink>
      </p>
      <div className={styles["deeds"]}>
        <p role="status" className={styles["line"]}>
          {isTrial
            ? "Tried on, not kept."
            : isChosen
              ? "Kept with the piece."
              : "All as assumed for every piece."}
        </p>
        <span className={`screen-only ${styles["buttons"]}`}>
          <Button look="main" isDisabled={!isTrial} onPress={keepTrial}>
            Keep with the piece
          </Button>
          <Button isDisabled={!isTrial} onPress={dropTrial}>
            Back to what is kept
          </Button>
          <Button isDisabled={!isChosen} onPress={() => tryOdds({})}>
            Reset to assumed
          </Button>
        </span>
      </div>
      {headline === undefined ? null : (
        <p className={styles["says"]} aria-live="polite">
          {headline}
        </p>
      )}
      <div className={styles["columns"]}>
        <div className={styles["whole"]}>
          <h3>Of the date and of the evidence</h3>
          <RadioGroup
            label="Before anything is seen, of the years"
            choices={DATE_PRIORS}
            value={odds.datePrior ?? ASSUMED_ODDS.datePrior}
            onChange={(prior) =>
              tryOdds(withChosen(odds, "datePrior", prior === ASSUMED_ODDS.datePrior ? undefined : prior))
            }
            direction="column"
          />
          <RangeField
            label="How often claims are wrong"
            value={Math.log10(wrong)}
            {...{ min: -1, max: 1, step: 0.1 }}
            says={sayWrong(wrong)}
            assumed={wrong === 1 ? undefined : "as often as assumed"}
            onChange={(exponent) => tryOdds(withChosen(odds, "wrongClaims", powerOfTen(exponent, 1)))}
          />
          <RangeField
            label="How far the known years can be wrong: a thing before its time, or a claim amiss"
            value={Math.log10(leak)}
            {...{ min: -4, max: -0.7, step: 0.1 }}
            says={sayLeak(leak)}
            assumed={odds.leak === undefined ? undefined : sayLeak(ASSUMED_ODDS.leak)}
            onChange={(exponent) =>
              tryOdds(withChosen(odds, "leak", powerOfTen(exponent, ASSUMED_ODDS.leak)))
            }
          />
          <label className={styles["check"]}>
            <input
              type="checkbox"
              checked={madeToDeceive !== undefined}
              onChange={({ target }) =>
                tryOdds(withChosen(odds, "madeToDeceive", target.checked ? FIRST_PRIOR : undefined))
              }
            />
            <span>
              Weigh “made later to look old” as well. No date can answer it: its prior is a choice and stands
              beside every answer.
            </span>
          </label>
          {madeToDeceive === undefined ? null : (
            <RangeField
              label="Prior of “made later to look old”"
              value={Math.log10(madeToDeceive)}
              {...{ min: -3, max: -0.3, step: 0.1 }}
              says={sayPrior(madeToDeceive)}
              onChange={(exponent) => tryOdds(withChosen(odds, "madeToDeceive", powerOfTen(exponent)))}
            />
          )}
        </div>
        <div>
          <h3>Of each part, before anything is seen</h3>
          <ul>
            {(weighed.weighing.dates?.parts ?? []).map(({ parts: group }) => {
              const said = parts?.find((each) => each.parts.join() === group.join());
              return said === undefined ? null : (
                <PartOdds key={group.join()} group={group} name={said.name} follows={said.brief} />
              );
            })}
          </ul>
        </div>
      </div>
    </section>
  );
}

/** Ten to the exponent, to two figures; nothing where that is what is assumed. */
function powerOfTen(exponent: number, assumed?: number): number | undefined {
  const value = Number((10 ** exponent).toPrecision(2));
  return assumed !== undefined && Math.abs(Math.log10(value / assumed)) < 0.05 ? undefined : value;
}
