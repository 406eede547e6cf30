import { beforeAll, describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { ridgewold } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { listCustomers } from "./list-customers";
import { lookUpVin } from "./look-up-vin";
import { addCustomer, editCustomer, findAlike } from "./save-customer";
import { addVehicle, editVehicle } from "./save-vehicle";
import { showCustomer } from "./show-customer";
import { listModels, showVehicle } from "./show-vehicle";

const trial = demoWorkshop();
const contact = { name: "Bettina Ashgrove", phone: "08 5550 9317", email: "", address: "", notes: "" };
let customerId = "";

beforeAll(async () => {
  customerId = (await trial.done("desk", addCustomer, contact)).id;
});

describe("a customer", () => {
  test("must be reachable", async () => {
    const refusal = await trial.refused("desk", addCustomer, { ...contact, phone: " " });
    expect(refusal).toMatchObject({ code: "invalid-input", field: "phone" });
  });

  test.each([
    ["name", { name: "" }],
    ["phone", { phone: "call me" }],
    ["email", { email: "bettina at home" }],
  ])("with a %s that is none is refused at that field", async (field, different) => {
    const refusal = await trial.refused("desk", addCustomer, { ...contact, ...different });
    expect(refusal).toMatchObject({ code: "invalid-input", field });
  });

  test("with somebody's telephone, however it is written, is added and the other is named", async () => {
    const again = await trial.done("desk", addCustomer, {
      ...contact,
      name: "B. Ashgrove",
      phone: "+61 8 5550 9317",
    });
    expect(again.alike).toEqual(["Bettina Ashgrove"]);
    const { alike } = await trial.done("desk", findAlike, {
      phone: "(08) 5550-9317",
      email: "",
      exceptId: customerId,
    });
    expect(alike.map(({ name }) => name)).toEqual(["B. Ashgrove"]);
  });

  test("edited by two people at once: the second is told, and the first's words stand", async () => {
    const before = await trial.done("desk", showCustomer, { customerId });
    const edit = { customerId, revision: before.revision, ...contact };
    await trial.done("desk", editCustomer, { ...edit, notes: "prefers mornings" });
    const refusal = await trial.refused("manager", editCustomer, { ...edit, notes: "prefers evenings" });
    expect(refusal.code).toBe("stale-customer");
    expect((await trial.done("desk", showCustomer, { customerId })).notes).toBe("prefers mornings");
  });

  test("of another workshop does not exist", async () => {
    for (const refusal of [
      await trial.refused("gulfDesk", showCustomer, { customerId }),
      await trial.refused("gulfDesk", editCustomer, { customerId, revision: 1, ...contact }),
      await trial.refused("gulfDesk", addVehicle, { customerId, ...ridgewold }),
      await trial.refused("desk", showCustomer, { customerId: newId() }),
    ]) {
      expect(refusal.code).toBe("customer-not-found");
    }
    const { customers } = await trial.done("gulfDesk", listCustomers, { search: "Ashgrove" });
    expect(customers).toEqual([]);
  });

  test("shows a technician no quotes", async () => {
    const [row] = await trial.sql("select customer_id from quote limit 1");
    const owner = String(row?.customer_id);
    const desk = await trial.done("desk", showCustomer, { customerId: owner });
    const technician = await trial.done("technician", showCustomer, { customerId: owner });
    expect(desk.quotes.length).toBeGreaterThan(0);
    expect(technician.quotes).toEqual([]);
  });

  test("is not a technician's to add", async () => {
    expect((await trial.refused("technician", addCustomer, contact)).code).toBe("not-allowed");
  });

  test("is found by part of the name, the telephone and the plate", async () => {
    await trial.done("desk", addVehicle, { customerId, ...ridgewold, vin: "1M8GDM9A1KP042789" });
    for (const search of ["ashgr", "5550 93", "7XK"]) {
      const { customers } = await trial.done("desk", listCustomers, { search });
      expect(customers.map(({ id }) => id)).toContain(customerId);
    }
  });
});

describe("a vehicle", () => {
  test("is added by its VIN as people write it, and kept in the normal form", async () => {
    const { id } = await trial.done("desk", addVehicle, {
      customerId,
      ...ridgewold,
      vin: " 1m8gdm9a-xkp042788 ",
    });
    const vehicle = await trial.done("desk", showVehicle, { vehicleId: id });
    expect(vehicle.vin).toBe("1M8GDM9AXKP042788");
    expect(vehicle.plate).toBe("7XK 2QD");
    // 49 CFR 565.15, worked example: the check digit of this VIN is X.
    expect(vehicle.vinSays.checkDigit).toEqual({ expected: "X", found: "X", matches: true });
  });

  test("twice in one workshop is refused, naming where it is", async () => {
    const refusal = await trial.refused("desk", addVehicle, { customerId, ...ridgewold });
    expect(refusal).toMatchObject({ code: "vin-taken", field: "vin" });
    expect(refusal.sentence).toContain("Bettina Ashgrove");
    const known = await trial.done("desk", lookUpVin, { vin: ridgewold.vin });
    expect(known.known).toMatchObject({ owner: "Bettina Ashgrove", plate: "7XK 2QD" });
  });

  test("of one workshop may come to another one too", async () => {
    const owner = await trial.done("gulfDesk", addCustomer, contact);
    await trial.done("gulfDesk", addVehicle, { customerId: owner.id, ...ridgewold });
  });

  test.each([
    ["too short", "1M8GDM9AXKP04278", /17 characters and this one has 16/],
    ["a letter O", "1M8GDM9AXKPO42788", /without I, O and Q: check O/],
    ["nothing", "", /Enter the VIN/],
  ])("with a VIN that has %s is refused with what to check", async (_, vin, words) => {
    const refusal = await trial.refused("desk", addVehicle, { customerId, ...ridgewold, vin });
    expect(refusal.field).toBe("vin");
    expect(refusal.sentence).toMatch(words);
  });

  test("with a check digit that does not match is told so and taken", async () => {
    const vin = "1M8GDM9A0KP042788";
    const says = await trial.done("desk", lookUpVin, { vin });
    expect(says.checkDigit).toEqual({ expected: "X", found: "0", matches: false });
    await trial.done("desk", addVehicle, { customerId, ...ridgewold, vin });
  });

  test.each([
    ["petrol without octane", { fuelOctane: null }, "octane-missing", "fuelOctane"],
    [
      "diesel with octane",
      { modelCode: "vale-30td", fuelKind: "diesel", fuelOctane: 95 },
      "octane-of-diesel",
      "fuelOctane",
    ],
    ["diesel in a petrol engine", { fuelKind: "diesel", fuelOctane: null }, "fuel-of-model", "fuelKind"],
    ["an octane of 9", { fuelOctane: 9 }, "invalid-input", "fuelOctane"],
    ["a model that nobody makes", { modelCode: "no-such" }, "model-unknown", "modelCode"],
    ["an odometer below nothing", { odometerKm: -1 }, "invalid-input", "odometerKm"],
    ["half a kilometre", { odometerKm: 10.5 }, "invalid-input", "odometerKm"],
  ])("with %s is refused at that field", async (_, different, code, field) => {
    const vin = "11111111111111111";
    const refusal = await trial.refused("desk", addVehicle, { customerId, ...ridgewold, vin, ...different });
    expect(refusal).toMatchObject({ code, field });
  });

  test("whose odometer runs back is asked about, and taken when it is right", async () => {
    const { id: vehicleId } = await trial.done("desk", addVehicle, {
      customerId,
      ...ridgewold,
      vin: "1M8GDM9A2KP042790",
    });
    const edit = {
      vehicleId,
      revision: 1,
      ...ridgewold,
      vin: "1M8GDM9A2KP042790",
      odometerKm: 20_000,
      odometerIsRight: false,
    };
    const asked = await trial.refused("desk", editVehicle, edit);
    expect(asked).toMatchObject({ code: "odometer-back", field: "odometerKm" });
    expect(asked.sentence).toContain("24,310 km");
    await trial.done("desk", editVehicle, { ...edit, odometerIsRight: true });
    const stale = await trial.refused("desk", editVehicle, { ...edit, odometerIsRight: true });
    expect(stale.code).toBe("stale-vehicle");
    const foreign = await trial.refused("gulfDesk", editVehicle, edit);
    expect(foreign.code).toBe("vehicle-not-found");
  });

  test("can be of any model the workshop builds", async () => {
    const { models } = await trial.done("desk", listModels, {});
    expect(models.map(({ code }) => code)).toContain("ridgewold-57-lift");
  });
});
