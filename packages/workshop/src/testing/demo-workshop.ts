import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type TestDatabase, testDatabase } from "@buildproof/database/testing";
import { afterAll } from "vitest";
import type { z } from "zod";
import type { Actor } from "../core/actor";
import type { Context } from "../core/context";
import { folderFileStore } from "../core/file-store";
import { perform } from "../core/perform";
import type { Refusal } from "../core/result";
import type { UseCase } from "../core/use-case";
import { demoNow, demoTemplate } from "./demo-moment";

/** The people of the demo by the part they play. `gulf…` belong to the other workshop. */
const emails = {
  desk: "noor@saltbush.example",
  manager: "marek@saltbush.example",
  technician: "tilda@saltbush.example",
  otherTechnician: "joss@saltbush.example",
  owner: "irena@saltbush.example",
  gulfDesk: "lena@gulfboost.example",
  gulfOwner: "samir@gulfboost.example",
} as const;

export type Part = keyof typeof emails;

type Trial = {
  readonly sql: TestDatabase["sql"];
  readonly database: TestDatabase["database"];
  readonly ownerUrl: string;
  readonly appUrl: string;
  /** The context of somebody, at the demo's moment or another. */
  as(actor: Part | Actor, at?: Date): Promise<Context>;
  /** Runs a use case as somebody and answers its value; a refusal fails the test. */
  done<Schema extends z.ZodType, Value>(
    actor: Part | Actor,
    useCase: UseCase<Schema, Value>,
    input: unknown,
    at?: Date,
  ): Promise<Value>;
  /** Runs a use case that must be refused, and answers why. */
  refused<Schema extends z.ZodType, Value>(
    actor: Part | Actor,
    useCase: UseCase<Schema, Value>,
    input: unknown,
    at?: Date,
  ): Promise<Refusal>;
};

/** Call once at the top of a test file: the demo workshop on a database of its own, dropped afterwards. */
export function demoWorkshop(): Trial {
  const test = testDatabase(demoTemplate);
  const folder = mkdtempSync(join(tmpdir(), "buildproof-files-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  async function personActor(part: Part): Promise<Actor> {
    const rows = await test().sql("select id, workshop_id, session_counter from person where email = $1", [
      emails[part],
    ]);
    const row = rows[0];
    if (!row) throw new Error(`the demo has no ${part}`);
    return {
      kind: "person",
      personId: String(row.id),
      workshopId: String(row.workshop_id),
      sessionCounter: Number(row.session_counter),
    };
  }

  async function as(actor: Part | Actor, at: Date = demoNow): Promise<Context> {
    return {
      database: test().database,
      files: folderFileStore(folder),
      actor: typeof actor === "string" ? await personActor(actor) : actor,
      now: () => at,
      requestId: "00000000-0000-4000-8000-000000000000",
      address: "192.0.2.1",
    };
  }

  return {
    sql: (text, values) => test().sql(text, values),
    get database() {
      return test().database;
    },
    get ownerUrl() {
      return test().ownerUrl;
    },
    get appUrl() {
      return test().appUrl;
    },
    as,
    async done(actor, useCase, input, at) {
      const result = await perform(await as(actor, at), useCase, input);
      if (!result.ok)
        throw new Error(`${useCase.name} was refused: ${result.refusal.code}: ${result.refusal.sentence}`);
      return result.value;
    },
    async refused(actor, useCase, input, at) {
      const result = await perform(await as(actor, at), useCase, input);
      if (result.ok) throw new Error(`${useCase.name} was allowed`);
      return result.refusal;
    },
  };
}
