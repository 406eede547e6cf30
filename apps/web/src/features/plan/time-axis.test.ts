import { describe, expect, test } from "vitest";
import { extentOf, instantAt, positionOf, timeAxis } from "./time-axis";

const day = (date: string) => ({
  date,
  opens: new Date(`${date}T07:00:00Z`),
  closes: new Date(`${date}T18:00:00Z`),
  isClosed: false,
});
const at = (text: string) => new Date(`${text}:00Z`);
const stretch = (from: string, to: string) => ({ startsAt: at(from), endsAt: at(to) });

describe("a day on the plan", () => {
  test("runs from opening to closing, an hour to each label", () => {
    const axis = timeAxis([day("2026-12-08")], []);
    expect(axis.hours).toHaveLength(11);
    expect(positionOf(axis, at("2026-12-08T07:00").getTime())).toBe(0);
    expect(positionOf(axis, at("2026-12-08T12:30").getTime())).toBeCloseTo(0.5, 12);
    expect(positionOf(axis, at("2026-12-08T19:00").getTime())).toBeNull();
  });

  test("stretches by whole hours over what is booked early or late in it", () => {
    const axis = timeAxis([day("2026-12-08")], [stretch("2026-12-08T05:40", "2026-12-08T19:10")]);
    expect(axis.segments[0]).toMatchObject({
      from: at("2026-12-08T05:00").getTime(),
      to: at("2026-12-08T20:00").getTime(),
    });
  });

  test("is not stretched by a vehicle that stands on its hoist for days: that is cut at the edge", () => {
    const held = stretch("2026-12-06T08:00", "2026-12-10T16:00");
    const axis = timeAxis([day("2026-12-08")], [held]);
    expect(axis.hours).toHaveLength(11);
    expect(extentOf(axis, held)).toEqual({ left: 0, width: 1 });
  });
});

describe("a week on the plan", () => {
  const days = ["2026-12-07", "2026-12-08", "2026-12-09"].map(day);

  test("leaves the nights out: a block overnight joins the evening to the morning", () => {
    const axis = timeAxis(days, []);
    const extent = extentOf(axis, stretch("2026-12-07T17:00", "2026-12-08T08:00"));
    expect(extent?.left).toBeCloseTo(10 / 33, 12);
    expect(extent?.width).toBeCloseTo(2 / 33, 12);
  });

  test("shows nothing of what lies in a night or outside its days", () => {
    const axis = timeAxis(days, []);
    expect(extentOf(axis, stretch("2026-12-11T08:00", "2026-12-11T09:00"))).toBeNull();
  });
});

test("a place that is pointed at means the half hour before it", () => {
  const axis = timeAxis([day("2026-12-08")], []);
  expect(instantAt(axis, 0.5)).toEqual(at("2026-12-08T12:30"));
  expect(instantAt(axis, 0.52)).toEqual(at("2026-12-08T12:30"));
});
