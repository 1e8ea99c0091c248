import type { DatabaseSync, SQLInputValue, SQLOutputValue, StatementSync } from "node:sqlite";
import { isProblem, type Problem } from "../../domain/problem.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { findMediumProblem, isBusy } from "./find-medium-problem.ts";
import { tryInTime } from "./try-in-time.ts";

/** Named parameters of a statement. */
export type Parameters = Readonly<Record<string, SQLInputValue>>;
/** A value of a column. */
export type Value = SQLInputValue;
type Row = Record<string, SQLOutputValue>;

/** An open file, with each statement prepared once. The caller of `all` and `get` vouches for the shape of a row. */
export interface Database {
  readonly raw: DatabaseSync;
  all<Shape extends object = Row>(sql: string, parameters?: Parameters): readonly Shape[];
  get<Shape extends object = Row>(sql: string, parameters?: Parameters): Shape | undefined;
  run(sql: string, parameters?: Parameters): void;
  /** The same with parameters by their place: half the time, where there are many. */
  put(sql: string, values: readonly Value[]): void;
  /** Reads one state of the file. Throws `StoreFailed` where the medium fails. */
  read<Answer>(what: () => Answer): Promise<Answer>;
  /**
   * Writes all or, if the answer is a problem or something is thrown, nothing. A failing medium is a problem too. One write
   * after the other, in the order in which they were asked for.
   */
  write<Answer>(what: () => Answer | Problem): Promise<Answer | Problem>;
  /** After the writes that were asked for. */
  close(): Promise<void>;
}

export interface Waits {
  /** How long to try again where another program writes, in milliseconds. */
  readonly patience?: number;
  /** Lets go of what is held with the file. */
  readonly release?: () => void;
}

type Done<Answer> = { readonly answer: Answer } | { readonly failure: unknown };

/** Wraps an open file. Nothing waits inside SQLite: the event loop goes on while another program writes. */
export function wrapDatabase(raw: DatabaseSync, { patience = 0, release = () => {} }: Waits = {}): Database {
  const prepared = new Map<string, StatementSync>();
  const prepare = (sql: string): StatementSync => {
    const known = prepared.get(sql);
    if (known !== undefined) return known;
    const statement = raw.prepare(sql);
    prepared.set(sql, statement);
    return statement;
  };
  const rollBack = (): void => {
    if (raw.isTransaction) raw.exec("ROLLBACK");
  };
  let last: Promise<unknown> = Promise.resolve();
  /** Tries until it can begin; what is done inside ends in the same turn. */
  const transact = async <Answer>(
    begin: string,
    what: () => Answer,
    asked = performance.now(),
  ): Promise<Done<Answer>> => {
    let busy: Done<Answer> | undefined;
    const left = asked + patience - performance.now();
    const done = await tryInTime(left, (): Done<Answer> | undefined => {
      try {
        raw.exec(begin);
        return { answer: what() };
      } catch (failure) {
        if (!isBusy(failure)) return { failure };
        busy = { failure };
        return undefined;
      } finally {
        rollBack();
      }
    });
    return done ?? (busy as Done<Answer>);
  };
  return {
    raw,
    all: <Shape extends object>(sql: string, parameters: Parameters = {}) =>
      prepare(sql).all(parameters) as unknown as readonly Shape[],
    get: <Shape extends object>(sql: string, parameters: Parameters = {}) =>
      prepare(sql).get(parameters) as unknown as Shape | undefined,
    run: (sql, parameters = {}) => {
      prepare(sql).run(parameters);
    },
    put: (sql, values) => {
      prepare(sql).run(...values);
    },
    read: async (what) => {
      const done = await transact("BEGIN", what);
      if ("failure" in done) throw asStoreFailed(done.failure);
      return done.answer;
    },
    write: (what) => {
      // The time in which it waits for those before it counts.
      const asked = performance.now();
      const written = last.then(async () => {
        const whole = () => {
          const answer = what();
          if (!isProblem(answer)) raw.exec("COMMIT");
          return answer;
        };
        const done = await transact("BEGIN IMMEDIATE", whole, asked);
        if (!("failure" in done)) return done.answer;
        const failed = asStoreFailed(done.failure);
        if (failed instanceof StoreFailed) return failed.problem;
        throw failed;
      });
      last = written.catch(() => undefined);
      return written;
    },
    close: async () => {
      await last;
      if (!raw.isOpen) return;
      raw.close();
      release();
    },
  };
}

/** A failure of the medium with what it means; any other as it is. */
export function asStoreFailed(failure: unknown): unknown {
  const refusal = findMediumProblem(failure);
  return refusal === undefined ? failure : new StoreFailed(refusal, failure);
}
