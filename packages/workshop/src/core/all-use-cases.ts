import { listApiTokens } from "../api/list-api-tokens";
import { makeApiToken } from "../api/make-api-token";
import { revokeApiToken } from "../api/revoke-api-token";
import { changeItems, choosePackage } from "../builds/change-items";
import { compareBuilds } from "../builds/compare-builds";
import { copyBuild } from "../builds/copy-build";
import { editGoal } from "../builds/edit-goal";
import { readForAlternatives } from "../builds/find-alternatives";
import { readForGoal } from "../builds/find-goal-ways";
import { listBuilds } from "../builds/list-builds";
import { listOfferedPackages } from "../builds/offered-packages";
import { recordInspection } from "../builds/record-inspection";
import { showSheet } from "../builds/show-sheet";
import { startBuild } from "../builds/start-build";
import { versionChain } from "../builds/version-chain";
import { changePart } from "../catalogue/change-part";
import { copyPackage, planCopy } from "../catalogue/copy-package";
import { editPart } from "../catalogue/edit-part";
import { discardVersion, renameVersion } from "../catalogue/edit-version";
import { exportCatalogue } from "../catalogue/export-catalogue";
import { goBack } from "../catalogue/go-back";
import { checkImport, importCatalogue } from "../catalogue/import-catalogue";
import { attachDocument, removeDocument } from "../catalogue/item-documents";
import { listCatalogue } from "../catalogue/list-catalogue";
import { listVersions } from "../catalogue/list-versions";
import { openExample } from "../catalogue/proof/open-example";
import { readForProof } from "../catalogue/proof/prove-catalogue";
import { publishVersion } from "../catalogue/publish-version";
import { saveItem } from "../catalogue/save-item";
import { savePackage } from "../catalogue/save-package";
import { readRuleBack, saveRule } from "../catalogue/save-rule";
import { scheduleVersion, withdrawVersion } from "../catalogue/schedule-version";
import { keepChange, undoChange } from "../catalogue/settle-change";
import { listPackages, showPackage } from "../catalogue/show-package";
import { showPart } from "../catalogue/show-part";
import { showVersion } from "../catalogue/show-version";
import { startVersion } from "../catalogue/start-version";
import { markSample, tryVersion } from "../catalogue/try/try-version";
import { customersToChoose } from "../customers/choose-customer";
import { listCustomers } from "../customers/list-customers";
import { lookUpVin } from "../customers/look-up-vin";
import { addCustomer, editCustomer, findAlike } from "../customers/save-customer";
import { addVehicle, editVehicle } from "../customers/save-vehicle";
import { showCustomer } from "../customers/show-customer";
import { listModels, showVehicle } from "../customers/show-vehicle";
import { admitDynoImport } from "../dyno/admit-import";
import { countRunAgain, excludeRun } from "../dyno/exclude-run";
import { showMeasuredChain } from "../dyno/measured-chain";
import { readDynoCertificate } from "../dyno/read-certificate";
import { recordDynoSession } from "../dyno/record-session";
import { releaseVerdict } from "../dyno/release-verdict";
import { showDyno } from "../dyno/show-dyno";
import { showJobDyno } from "../dyno/show-job";
import { showVehicleDyno } from "../dyno/show-vehicle";
import { changeAssumption, resetAssumption } from "../engineering/change-assumption";
import { showChassis } from "../engineering/show-chassis";
import { showForecast } from "../engineering/show-forecast";
import { keepPhoto } from "../files/keep-photo";
import { findEverything } from "../find/find-everything";
import { checkIn, readCheckIn } from "../floor/check-in";
import { startClock, stopClock } from "../floor/clock";
import { correctClock } from "../floor/correct-clock";
import { clearFault, raiseFault } from "../floor/faults";
import { myDay } from "../floor/my-day";
import { readCard } from "../floor/read-card";
import { recordStep } from "../floor/record-step";
import { reopenStep } from "../floor/reopen-step";
import { enterSignature, mayAskForSignature } from "../floor/sign-hold-point";
import { addPerson } from "../identity/add-person";
import { changePerson } from "../identity/change-person";
import { endSessions } from "../identity/end-sessions";
import { getPerson } from "../identity/get-person";
import { givePassword } from "../identity/give-password";
import { listPeople } from "../identity/list-people";
import { changePassword, signOutEverywhere, whoAmI } from "../identity/own-account";
import { creditInvoice } from "../invoices/credit-invoice";
import { invoicePdf } from "../invoices/invoice-pdf";
import { invoiceXml } from "../invoices/invoice-xml";
import { issueInvoice } from "../invoices/issue-invoice";
import { invoicesOfQuote } from "../invoices/list-invoices";
import { countGoodsIn } from "../jobs/count-goods-in";
import { jobGate } from "../jobs/gate";
import { listJobs } from "../jobs/list-jobs";
import { readJob } from "../jobs/read-job";
import { resumeJob } from "../jobs/resume-job";
import { stopJob } from "../jobs/stop-job";
import { exportMargins } from "../owner/export-margins";
import { jobMargin } from "../owner/job-margin";
import { marginsByPackage } from "../owner/margins-by-package";
import { packageMargin } from "../owner/package-margin";
import { packageStep } from "../owner/package-step";
import { recordCost } from "../owner/record-cost";
import { attachEvidence } from "../paperwork/attach-evidence";
import { finishWork } from "../paperwork/finish-work";
import { handOver } from "../paperwork/hand-over";
import { handOverPack } from "../paperwork/hand-over-pack";
import { layOutPaperwork } from "../paperwork/lay-out";
import { readFile } from "../paperwork/read-file";
import { readHandOver } from "../paperwork/read-hand-over";
import { bookJob } from "../planning-desk/book";
import { cancelBooking, moveBooking } from "../planning-desk/change-booking";
import { readPlan } from "../planning-desk/read-plan";
import { acceptVersion } from "../quotes/accept-version";
import { addLine } from "../quotes/add-line";
import { answerQuestion } from "../quotes/answer-question";
import { askQuestion } from "../quotes/ask-question";
import { compareVersions } from "../quotes/compare-versions";
import { declineVersion } from "../quotes/decline-version";
import { discardDraft } from "../quotes/discard-draft";
import { draftFromBuild } from "../quotes/draft-from-build";
import { editLine } from "../quotes/edit-line";
import { editTerms } from "../quotes/edit-terms";
import { issueVersion } from "../quotes/issue-version";
import { listQuotes } from "../quotes/list-quotes";
import { makeLink } from "../quotes/make-link";
import { makeVersion } from "../quotes/make-version";
import { letterPdf, versionPdf } from "../quotes/quote-pdf";
import { readLetter } from "../quotes/read-letter";
import { receiptPdf } from "../quotes/receipt-pdf";
import { recordPayment } from "../quotes/record-payment";
import { recordRefund } from "../quotes/record-refund";
import { removeLine } from "../quotes/remove-line";
import { revokeLink } from "../quotes/revoke-link";
import { showQuote } from "../quotes/show-quote";
import { takeBuildAgain } from "../quotes/take-build-again";
import { changeSite } from "../sites/change-site";
import { showSite } from "../sites/show-site";
import { showToday } from "../today/show-today";
import type { UseCase } from "./use-case";

/**
 * Every use case there is, for the test that holds each against every role and against none.
 * A use case that is not listed here fails that test's count.
 */
export const allUseCases = [
  listApiTokens,
  makeApiToken,
  revokeApiToken,
  admitDynoImport,
  countRunAgain,
  excludeRun,
  readDynoCertificate,
  recordDynoSession,
  releaseVerdict,
  showDyno,
  showJobDyno,
  showMeasuredChain,
  showVehicleDyno,
  changeAssumption,
  resetAssumption,
  showForecast,
  whoAmI,
  signOutEverywhere,
  changePassword,
  keepPhoto,
  checkIn,
  readCheckIn,
  correctClock,
  startClock,
  stopClock,
  clearFault,
  raiseFault,
  myDay,
  readCard,
  recordStep,
  reopenStep,
  enterSignature,
  mayAskForSignature,
  addPerson,
  changePerson,
  endSessions,
  getPerson,
  givePassword,
  listPeople,
  countGoodsIn,
  jobGate,
  listJobs,
  readJob,
  resumeJob,
  stopJob,
  attachEvidence,
  finishWork,
  handOver,
  handOverPack,
  layOutPaperwork,
  readFile,
  readHandOver,
  bookJob,
  cancelBooking,
  moveBooking,
  readPlan,
  changeItems,
  choosePackage,
  editGoal,
  compareBuilds,
  copyBuild,
  readForAlternatives,
  readForGoal,
  listBuilds,
  listOfferedPackages,
  recordInspection,
  showSheet,
  startBuild,
  versionChain,
  changePart,
  editPart,
  discardVersion,
  renameVersion,
  goBack,
  attachDocument,
  removeDocument,
  listCatalogue,
  listVersions,
  openExample,
  readForProof,
  copyPackage,
  planCopy,
  savePackage,
  listPackages,
  showPackage,
  exportCatalogue,
  checkImport,
  importCatalogue,
  publishVersion,
  saveItem,
  readRuleBack,
  saveRule,
  scheduleVersion,
  withdrawVersion,
  keepChange,
  undoChange,
  showPart,
  showVersion,
  markSample,
  tryVersion,
  startVersion,
  customersToChoose,
  listCustomers,
  lookUpVin,
  addCustomer,
  editCustomer,
  findAlike,
  addVehicle,
  editVehicle,
  showCustomer,
  listModels,
  showVehicle,
  showChassis,
  findEverything,
  showToday,
  creditInvoice,
  invoicePdf,
  invoiceXml,
  issueInvoice,
  invoicesOfQuote,
  acceptVersion,
  addLine,
  answerQuestion,
  askQuestion,
  compareVersions,
  declineVersion,
  discardDraft,
  draftFromBuild,
  editLine,
  editTerms,
  issueVersion,
  listQuotes,
  makeLink,
  makeVersion,
  letterPdf,
  versionPdf,
  readLetter,
  receiptPdf,
  recordPayment,
  recordRefund,
  removeLine,
  revokeLink,
  showQuote,
  takeBuildAgain,
  exportMargins,
  jobMargin,
  marginsByPackage,
  packageMargin,
  packageStep,
  recordCost,
  changeSite,
  showSite,
] as unknown as readonly UseCase[]; // Each takes its own input; the table only asks names and permissions.
