import { caution } from "./caution";
import { fitted, onHoist } from "./operation";
import { measure, serial, tick, torque } from "./step";
import type { Operation } from "./types";

/** Tow bars, towing gear and the body. Torques are the maker's own figures, held here as data. */
export const towingBodyOperations: readonly Operation[] = [
  onHoist({
    id: "fit-tow-bar",
    name: "Fit tow bar",
    ownHours: 2.3,
    access: ["rear-bar"],
    steps: [
      serial("plate", "Number on the bar's plate, with its trailer and ball load.", {
        cautions: [caution.hoist],
      }),
      torque("bolts", "Bar bolts, from its maker's sheet.", 120, 6),
      torque("ball", "Ball nut.", 230, 12),
      fitted,
    ],
  }),
  onHoist({
    id: "set-up-hitch",
    name: "Set up weight-distribution hitch",
    ownHours: 1.3,
    access: [],
    place: "floor",
    order: 100,
    steps: [
      measure("front", "Front axle load brought back, of what the ball took from it.", "%", 50, 100, {
        cautions: [caution.trailerBrakes],
      }),
      tick("told", "Owner shown: off for deep gutters and rough ground."),
    ],
  }),
  onHoist({
    id: "fit-towing-mirrors",
    name: "Fit towing mirrors",
    ownHours: 0.5,
    access: [],
    place: "floor",
    steps: [tick("view", "Van's rear corners seen from the driver's seat; folded back when not towing.")],
  }),
  onHoist({
    id: "check-breakaway",
    name: "Check the breakaway system",
    ownHours: 0.6,
    access: [],
    place: "floor",
    order: 103,
    skill: "electrical",
    steps: [
      measure("hold", "Pin pulled: brakes hold for.", "min", 15, 30, { cautions: [caution.trailerBrakes] }),
      tick("wheels", "Every braked wheel is held, by hand on the jack.", { cautions: [caution.hoist] }),
    ],
  }),
  onHoist({
    id: "fit-side-steps",
    name: "Fit side steps",
    ownHours: 2.4,
    access: [],
    steps: [torque("mounts", "Mounts.", 45, 4, { cautions: [caution.hoist] }), fitted],
  }),
  onHoist({
    id: "fit-roof-rack",
    name: "Fit roof rack",
    ownHours: 1.6,
    access: [],
    place: "floor",
    steps: [
      torque("feet", "Feet.", 12, 1),
      tick("label", "Load label on the rack: the least of roof, rack and what is left of the payload."),
    ],
  }),
  onHoist({
    id: "fit-underbody-plates",
    name: "Fit underbody plates",
    ownHours: 1.2,
    access: ["undertray"],
    steps: [
      torque("bolts", "Plate bolts.", 38, 3, { cautions: [caution.hoist] }),
      tick("air", "Air reaches gearbox and sump; nothing within 50 mm of the exhaust."),
    ],
  }),
  onHoist({
    id: "fit-canopy",
    name: "Fit canopy",
    ownHours: 3.4,
    access: [],
    place: "floor",
    skill: "electrical",
    steps: [
      torque("clamps", "Clamps, all round, in turn.", 22, 2),
      tick("lamp", "Brake lamp and central locking work; no exhaust drawn in at idle."),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-drawers",
    name: "Fit drawers",
    ownHours: 2.6,
    access: [],
    place: "floor",
    steps: [
      tick("bolted", "Bolted to the tray's own points, not to its skin; latches hold on a slope."),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-paint-film",
    name: "Paint protection film, fitted outside",
    ownHours: 0.3,
    access: [],
    place: "bought-in",
    steps: [tick("edges", "No edge lifts, no sensor or lamp covered.")],
  }),
  onHoist({
    id: "fit-boot-lip",
    name: "Fit boot lip",
    ownHours: 0.9,
    access: [],
    place: "floor",
    steps: [tick("clear", "Brake lamp and plate stay visible."), fitted],
  }),
  onHoist({
    id: "fit-dark-trim",
    name: "Fit dark trim",
    ownHours: 2.2,
    access: [],
    place: "floor",
    steps: [tick("paint", "Paint under the badges looked at and photographed."), fitted],
  }),
  onHoist({
    id: "fit-driving-lamps",
    name: "Fit driving lamps",
    ownHours: 1.6,
    access: [],
    skill: "electrical",
    steps: [
      tick("area", "Lamps cover no more than 15 % of the cooler stack."),
      tick("switch", "Only with high beam, own fuse, aimed.", { cautions: [caution.battery] }),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-front-bar",
    name: "Fit front bar",
    ownHours: 4.4,
    access: ["front-end"],
    steps: [
      tick("listed", "Bar is on the maker's list for the airbag sensors of this model.", {
        cautions: [caution.airbag],
      }),
      torque("mounts", "Bar mounts.", 68, 5),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-winch",
    name: "Fit winch",
    ownHours: 2.4,
    access: ["front-end"],
    skill: "electrical",
    steps: [
      torque("winch", "Winch bolts.", 68, 5),
      tick("isolator", "Isolator fitted, cable clear of hot parts.", { cautions: [caution.battery] }),
      fitted,
    ],
  }),
];
