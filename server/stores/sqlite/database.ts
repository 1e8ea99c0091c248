import type { DatabaseSync, SQLInputValue, SQLOutputValue, StatementSync } from "node:sqlite";
import { isProblem, type Problem } from "../../domain/problem.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { addDigest } from "./digest-of-version.ts";
import { findMediumProblem } from "./find-medium-problem.ts";

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
  read<Answer>(what: () => Answer): Answer;
  /** Writes all or, if the answer is a problem or something is thrown, nothing. A failing medium is a problem too. */
  write<Answer>(what: () => Answer | Problem): Answer | Problem;
  close(): void;
}

/** Wraps an open file; `release` lets go of what is held with it. */
export function wrapDatabase(raw: DatabaseSync, release: () => void = () => {}): Database {
  addDigest(raw);
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
    read: (what) => {
      try {
        raw.exec("BEGIN");
        return what();
      } catch (failure) {
        throw asStoreFailed(failure);
      } finally {
        rollBack();
      }
    },
    write: (what) => {
      try {
        raw.exec("BEGIN IMMEDIATE");
        const answer = what();
        if (!isProblem(answer)) raw.exec("COMMIT");
        return answer;
      } catch (failure) {
        const failed = asStoreFailed(failure);
        if (failed instanceof StoreFailed) return failed.problem;
        throw failure;
      } finally {
        rollBack();
      }
    },
    close: () => {
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
