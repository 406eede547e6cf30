export { type Database, openDatabase, type Transaction } from "./client";
export { type DatabaseRefusal, databaseRefusal } from "./database-refusal";
