import { describe, expect, test } from "vitest";
import type { DynoLogResult, DynoLogRow } from "./dyno-log-row";
import { type DynoLogOptions, readDynoLog } from "./read-dyno-log";

const encoder = new TextEncoder();

async function* inPieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

async function read(content: string | Uint8Array, options: DynoLogOptions & { piece?: number } = {}) {
  const bytes = typeof content === "string" ? encoder.encode(content) : content;
  const rows: DynoLogRow[] = [];
  const result = await readDynoLog(
    inPieces(bytes, options.piece ?? 65_536),
    (row) => rows.push(row),
    options,
  );
  return { result, rows };
}

const refusalOf = (result: DynoLogResult) => {
  if (result.ok) throw new Error("The log was read.");
  return result.refusal;
};

const refusalFor = async (content: string | Uint8Array, options: DynoLogOptions = {}) =>
  refusalOf((await read(content, options)).result);

const header = "time_s,engine_rpm,hub_power_kw\n";

describe("a log that can be read", () => {
  test("gives its rows in our units, channel by channel", async () => {
    const { result, rows } = await read(
      "time_s,engine_rpm,hub_power_kw,boost_kpa,lambda\n0.00,2000,80.5,12,0.88\n0.01,2010,81,,0.87\n",
    );
    expect(result).toMatchObject({ ok: true, rows: 2, runs: [{ run: "1", rows: 2 }] });
    expect(rows).toEqual([
      { run: "1", timeS: 0, engineRpm: 2000, hubPowerKw: 80.5, boostKPa: 12, lambda: 0.88 },
      { run: "1", timeS: 0.01, engineRpm: 2010, hubPowerKw: 81, lambda: 0.87 },
    ]);
  });

  test("may have a byte-order mark, semicolons, decimal commas, CRLF and no last line end", async () => {
    const { result, rows } = await read(
      "\uFEFFtime_s;engine_rpm;hub_torque_nm\r\n0,5;2000,5;401,25\r\n0,6;2010;402",
    );
    expect(result.ok).toBe(true);
    expect(rows[0]).toEqual({ run: "1", timeS: 0.5, engineRpm: 2000.5, hubTorqueNm: 401.25 });
    expect(rows).toHaveLength(2);
  });

  test("may be tabbed, quoted, with headings as people write them and columns that we do not know", async () => {
    const { rows } = await read(
      '"Time (s)"\t"Engine speed [rpm]"\tHub torque (N·m)\t"note ""a"""\n0\t"2000"\t400\t"see\nline"\n',
    );
    expect(rows).toEqual([{ run: "1", timeS: 0, engineRpm: 2000, hubTorqueNm: 400 }]);
  });

  /* 1 psi = 6.894757 kPa, 1 lbf·ft = 1.355818 N·m, 1 mechanical hp = 745.69987 W: NIST SP 811, appendix B. */
  test("may be in psi, lbf·ft, horsepower, bar, milliseconds and Fahrenheit", async () => {
    const { rows } = await read(
      "time_ms,engine_rpm,hub_power_hp,hub_torque_lbft,boost_psi,fuel_rail_bar,intake_temp_f\n1500,3000,350,368,9.3,200,212\n",
    );
    expect(rows[0]?.timeS).toBe(1.5);
    expect(rows[0]?.hubPowerKw).toBeCloseTo(260.995, 3);
    expect(rows[0]?.hubTorqueNm).toBeCloseTo(498.941, 3);
    expect(rows[0]?.boostKPa).toBeCloseTo(64.1212, 4);
    expect(rows[0]?.fuelRailMPa).toBe(20);
    expect(rows[0]?.intakeTempC).toBeCloseTo(100, 9);
  });

  test("is split into runs by its run column, and time may start again in each", async () => {
    const { result, rows } = await read(`run,${header}1,0,2000,80\n1,1,2500,90\n2,0,2000,81\n`);
    expect(result).toMatchObject({
      ok: true,
      rows: 3,
      runs: [
        { run: "1", rows: 2 },
        { run: "2", rows: 1 },
      ],
    });
    expect(rows.map(({ run }) => run)).toEqual(["1", "1", "2"]);
  });

  test.each([1, 2, 3, 7, 50])(
    "is the same whether it comes whole or in pieces of %i bytes",
    async (piece) => {
      const text =
        '\uFEFFtime_s;engine_rpm;hub_power_kw;"Anmerkung größer"\r\n0,1;2000;80;"a;b"\r\n\r\n0,2;2100;81;"c\r\nd"\r\n0,3;2200;82;é';
      const whole = await read(text);
      expect(whole.rows).toHaveLength(3);
      expect(await read(text, { piece })).toEqual(whole);
    },
  );
});

describe("a log that is refused", () => {
  test("bytes that are no text", async () => {
    expect(
      await refusalFor(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0)),
    ).toMatchObject({ code: "not-text" });
    expect(await refusalFor(Uint8Array.of(0x74, 0xff, 0x0a))).toMatchObject({ code: "not-text" });
    expect(await refusalFor(Uint8Array.of(0x74, 0x0a, 0xe2, 0x82))).toMatchObject({ code: "not-text" });
  });

  test("an empty file, and one that begins with numbers", async () => {
    expect(await refusalFor("")).toMatchObject({ code: "no-header" });
    expect(await refusalFor("0,2000,80\n1,2100,81\n")).toMatchObject({ code: "no-header", row: 1 });
  });

  test("missing columns, named", async () => {
    const refusal = await refusalFor("time_s,boost_kpa\n0,12\n");
    expect(refusal).toMatchObject({
      code: "missing-columns",
      column: "engine_rpm, hub_power_kw (or hub_torque_nm)",
    });
    expect(refusal.sentence).toContain("engine_rpm and hub_power_kw");
  });

  test("text that is no table", async () => {
    expect(await refusalFor("<!doctype html><title>Log</title>\n<p>")).toMatchObject({
      code: "missing-columns",
    });
  });

  test("a column that stands twice", async () => {
    expect(await refusalFor("time_s,engine_rpm,Engine RPM,hub_power_kw\n")).toMatchObject({
      code: "doubled-column",
      column: "engine_rpm",
    });
  });

  test.each([
    ["abc", "not-a-number"],
    ["12..5", "not-a-number"],
    ["0x1F", "not-a-number"],
    ["", "not-a-number"],
    ["NaN", "not-finite"],
    ["-Infinity", "not-finite"],
    ["1e999", "not-finite"],
  ])("%j in an engine speed, with its line and column", async (text, code) => {
    const refusal = await refusalFor(`${header}0,2000,80\n1,${text},81\n`);
    expect(refusal).toMatchObject({ code, row: 3, column: "engine_rpm" });
    expect(refusal.sentence).toContain("Line 3");
  });

  test("a line with too few fields", async () => {
    expect(await refusalFor(`${header}0,2000,80\n1,21`)).toMatchObject({
      code: "wrong-number-of-fields",
      row: 3,
    });
  });

  test("a decimal comma between commas, which splits the field", async () => {
    expect(await refusalFor(`${header}0,5,2000,80\n`)).toMatchObject({
      code: "wrong-number-of-fields",
      row: 2,
    });
  });

  test("a quotation mark that never closes", async () => {
    expect(await refusalFor(`${header}0,"2000,80\n1,2100,81\n`)).toMatchObject({
      code: "unreadable",
      row: 2,
    });
  });

  test("a header without rows", async () => {
    expect(await refusalFor(header)).toMatchObject({ code: "no-rows" });
  });

  test("time that goes backwards", async () => {
    const refusal = await refusalFor(`${header}0,2000,80\n1,2100,81\n0.5,2200,82\n`);
    expect(refusal).toMatchObject({ code: "time-goes-backwards", row: 4 });
    expect(refusal.sentence).toContain("run column");
  });

  test("a run column that numbers the rows", async () => {
    const rows = Array.from({ length: 101 }, (_, index) => `${index},${index},2000,80`).join("\n");
    expect(await refusalFor(`run,${header}${rows}`)).toMatchObject({ code: "too-many-runs" });
  });

  test("200 MB, without reading on past the limit", async () => {
    let produced = 0;
    async function* endless(): AsyncGenerator<Uint8Array> {
      yield encoder.encode(header);
      const megabyte = encoder.encode("1,2000,80\n".repeat(100_000));
      for (; produced < 200; produced += 1) yield megabyte;
    }
    const result = await readDynoLog(endless(), () => undefined, { limitBytes: 10_000_000 });
    expect(refusalOf(result)).toMatchObject({ code: "too-large" });
    expect(refusalOf(result).sentence).toContain("10 MB");
    expect(produced).toBeLessThan(11);
  });
});
