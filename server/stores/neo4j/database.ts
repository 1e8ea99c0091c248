import neo4j, { type Driver, type ManagedTransaction } from "neo4j-driver";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import { inTime, TOO_LATE } from "../../ports/in-time.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { findServerProblem } from "./find-server-problem.ts";
import type { Neo4jAddress } from "./neo4j-address.ts";
import { takeTurns } from "./take-turns.ts";

/** Named parameters of a statement; whole numbers are handed over as such, `$store` is always there. */
export type Parameters = Readonly<Record<string, unknown>>;

/** Runs a statement inside a write. The caller vouches for the shape of a row. */
export type Run = <Row extends object>(cypher: string, parameters?: Parameters) => Promise<readonly Row[]>;

export interface Limits {
  /** How long to go on trying where the server cannot be reached or another program writes, in milliseconds. */
  readonly patience: number;
  /** Rows that one transaction takes; more are written in several. */
  readonly rowsAtOnce: number;
}

/** One store of one database of a server. */
export interface Database {
  readonly address: Neo4jAddress;
  readonly limits: Limits;
  /** One statement that only reads. Throws `StoreFailed` where the server fails. */
  read<Row extends object>(cypher: string, parameters?: Parameters): Promise<readonly Row[]>;
  /**
   * Writes all or, if the answer is a problem or something is thrown, nothing. A failing server is a problem too. The work
   * is done again where the server asks for that or where the connection broke, also after it may have been kept: it has
   * to find out by itself. What is not done in time is given up, and nobody knows then whether it was kept: a step of some
   * thousand rows takes longer than little, and much longer than a step.
   */
  write<Answer>(
    work: (run: Run) => Promise<Answer | Problem>,
    amount?: "little" | "step" | "much",
  ): Promise<Answer | Problem>;
  /** Reads several things of one moment: no writer is let in until it has ended. Throws `StoreFailed` where the server fails. */
  readMoment<Answer>(work: (run: Run) => Promise<Answer>): Promise<Answer>;
  /** A statement outside any work, for the schema. */
  administer(cypher: string): Promise<readonly object[]>;
  close(): Promise<void>;
}

/** Ends a work that only looked, so that its lock goes with it. */
const NOTHING_WRITTEN: Problem = problem("STORE_LOCKED", "Nothing was written.");

/** How long a row of a step may take, in milliseconds: thirty times what it does. */
const A_ROW = 10;

/** How long the server may take over one statement, in milliseconds. */
const LONGEST_READ = 30_000;
/** How long a transaction may take that writes little, even where patience is shorter, and one that writes much. */
const LITTLE = 5_000;
const MUCH = 120_000;
/** How long an answer may be on its way, in milliseconds: a connection can go silent without breaking. */
const ON_THE_WAY = 5_000;

/** Reads of a server, and writes one after the other, so that those of this process wait here and not at the server. */
export function wrapDriver(driver: Driver, address: Neo4jAddress, limits: Limits): Database {
  const bookmarkManager = driver.executeQueryBookmarkManager;
  const turns = takeTurns();
  const { patience } = limits;
  const little = Math.max(patience, LITTLE);
  const longest = { little, step: little + limits.rowsAtOnce * A_ROW, much: MUCH };

  const write = async <Answer>(
    work: (run: Run) => Promise<Answer | Problem>,
    timeout: number,
    isGivenUp: () => boolean,
  ): Promise<Answer | Problem> => {
    const session = driver.session({ database: address.database, bookmarkManager });
    try {
      return await session.executeWrite(
        async (transaction) => {
          if (isGivenUp()) throw new Refused(noAnswer());
          const answer = await work(runIn(transaction, address));
          if (isGivenUp()) throw new Refused(noAnswer());
          if (isProblem(answer)) throw new Refused(answer);
          return answer;
        },
        { timeout },
      );
    } catch (failure) {
      if (failure instanceof Refused) return failure.refusal;
      const refusal = findServerProblem(failure);
      if (refusal === undefined) throw failure;
      return refusal;
    } finally {
      // A session of a silent connection does not close either.
      session.close().catch(() => undefined);
    }
  };

  return {
    address,
    limits,
    read: async <Row extends object>(cypher: string, parameters: Parameters = {}) => {
      try {
        const answer = driver.executeQuery(cypher, prepare(parameters, address), {
          database: address.database,
          routing: neo4j.routing.READ,
          transactionConfig: { timeout: LONGEST_READ },
        });
        const read = await inTime(answer, LONGEST_READ + ON_THE_WAY);
        if (read === TOO_LATE) throw new StoreFailed(noAnswer(), undefined);
        return read.records.map((record) => record.toObject() as Row);
      } catch (failure) {
        if (failure instanceof StoreFailed) throw failure;
        const refusal = findServerProblem(failure);
        throw refusal === undefined ? failure : new StoreFailed(refusal, failure);
      }
    },
    readMoment: async (work) => {
      let answer: { readonly is: Awaited<ReturnType<typeof work>> } | undefined;
      const looked = write<never>(
        async (run) => {
          await run("MATCH (s:Store {name: $store}) SET s.lockedBy = 'a reader'");
          answer = { is: await work(run) };
          return NOTHING_WRITTEN;
        },
        MUCH,
        () => false,
      );
      const ended = await inTime(looked, MUCH + ON_THE_WAY);
      if (ended === TOO_LATE) throw new StoreFailed(noAnswer(), undefined);
      if (ended !== NOTHING_WRITTEN) throw new StoreFailed(ended, undefined);
      return (answer as NonNullable<typeof answer>).is;
    },
    write: async (work, amount = "little") => {
      const most = longest[amount];
      const written = await turns.take((isGivenUp) => write(work, most, isGivenUp), {
        patience,
        longest: most,
      });
      return written === TOO_LATE ? noAnswer() : written;
    },
    administer: async (cypher) => {
      const session = driver.session({ database: address.database, bookmarkManager });
      try {
        const answer = await inTime(Promise.resolve(session.run(cypher)), MUCH + ON_THE_WAY);
        if (answer === TOO_LATE) throw new StoreFailed(noAnswer(), undefined);
        return answer.records.map((record) => record.toObject());
      } finally {
        session.close().catch(() => undefined);
      }
    },
    close: async () => {
      await turns.ended();
      await inTime(driver.close(), ON_THE_WAY);
    },
  };
}

/** For a server that went silent. */
export const noAnswer = (): Problem =>
  problem(
    "STORE_UNREACHABLE",
    "The Neo4j server did not answer in time. Try again; look first whether what was to be written is there.",
  );

/** Rolls a transaction back and is not retried. */
class Refused extends Error {
  readonly refusal: Problem;
  constructor(refusal: Problem) {
    super(refusal.message);
    this.refusal = refusal;
  }
}

const runIn =
  (transaction: ManagedTransaction, address: Neo4jAddress): Run =>
  async <Row extends object>(cypher: string, parameters: Parameters = {}) => {
    const { records } = await transaction.run(cypher, prepare(parameters, address));
    return records.map((record) => record.toObject() as Row);
  };

const prepare = (parameters: Parameters, { store }: Neo4jAddress): object =>
  withIntegers({ store, ...parameters }) as object;

/** The driver takes numbers for fractions; ours are whole where they look so. What holds no number is not copied. */
function withIntegers(value: unknown): unknown {
  if (typeof value === "number") return Number.isSafeInteger(value) ? neo4j.int(value) : value;
  if (typeof value !== "object" || value === null || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value)) return value.every(isText) ? value : value.map(withIntegers);
  const copy: Record<string, unknown> = {};
  for (const name in value) copy[name] = withIntegers((value as Readonly<Record<string, unknown>>)[name]);
  return copy;
}

const isText = (value: unknown): boolean => typeof value === "string";
