-- CreateTable
CREATE TABLE "Book" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "name" TEXT COLLATE "C" NOT NULL,
    "timeZone" TEXT COLLATE "C" NOT NULL,
    "units" TEXT COLLATE "C" NOT NULL,
    "currency" TEXT COLLATE "C" NOT NULL,
    "dateOrder" TEXT COLLATE "C" NOT NULL,
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "closedWeekdays" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "feedSecret" TEXT COLLATE "C",
    "houseLengthNm" BIGINT NOT NULL DEFAULT 300000000,
    "houseWidthNm" BIGINT NOT NULL DEFAULT 100000000,
    "kerfNm" BIGINT NOT NULL DEFAULT 3200000,
    "revision" INTEGER NOT NULL DEFAULT 0,
    "labelSerial" INTEGER NOT NULL DEFAULT 0,
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Book_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Place" (
    "id" SERIAL NOT NULL,
    "parentId" INTEGER,
    "name" TEXT COLLATE "C" NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "label" TEXT COLLATE "C" NOT NULL,

    CONSTRAINT "Place_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ResinSystem" (
    "id" SERIAL NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,

    CONSTRAINT "ResinSystem_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Product" (
    "id" SERIAL NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,
    "maker" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "kind" TEXT COLLATE "C" NOT NULL,
    "unit" TEXT COLLATE "C" NOT NULL,
    "densityGramsPerLitre" INTEGER,
    "packageSize" BIGINT NOT NULL,
    "tareMg" BIGINT,
    "policyKind" TEXT COLLATE "C" NOT NULL,
    "statedLifeCount" INTEGER,
    "statedLifeUnit" TEXT COLLATE "C",
    "statedLifeBasis" TEXT COLLATE "C" NOT NULL,
    "openedLifeCount" INTEGER,
    "openedLifeUnit" TEXT COLLATE "C",
    "openedLifeBasis" TEXT COLLATE "C" NOT NULL,
    "careWindowDays" INTEGER NOT NULL,
    "freezingRuins" BOOLEAN NOT NULL DEFAULT false,
    "storageLeastTenthsC" INTEGER,
    "storageMostTenthsC" INTEGER,
    "colourShows" BOOLEAN NOT NULL DEFAULT false,
    "systemId" INTEGER,
    "part" TEXT COLLATE "C",
    "hazards" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "safetySheet" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Product_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Stock" (
    "id" SERIAL NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "label" TEXT COLLATE "C",
    "quantity" BIGINT NOT NULL DEFAULT 0,
    "placeId" INTEGER,
    "condition" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "hold" TEXT COLLATE "C" NOT NULL DEFAULT 'free',
    "ownerJobId" INTEGER,
    "opened" TEXT COLLATE "C",
    "lastMovementId" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "Stock_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Lot" (
    "stockId" INTEGER NOT NULL,
    "productId" INTEGER NOT NULL,
    "code" TEXT COLLATE "C",
    "madeOn" TEXT COLLATE "C",
    "madePrecision" TEXT COLLATE "C",
    "madeConfirmed" BOOLEAN NOT NULL DEFAULT false,
    "bestBefore" TEXT COLLATE "C",
    "bestPrecision" TEXT COLLATE "C",
    "bestConfirmed" BOOLEAN NOT NULL DEFAULT false,
    "useBy" TEXT COLLATE "C",
    "usePrecision" TEXT COLLATE "C",
    "useConfirmed" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "Lot_pkey" PRIMARY KEY ("stockId")
);

-- CreateTable
CREATE TABLE "Container" (
    "stockId" INTEGER NOT NULL,
    "lotId" INTEGER NOT NULL,
    "productId" INTEGER NOT NULL,
    "size" BIGINT NOT NULL,
    "tareMg" BIGINT,
    "openedLifeCount" INTEGER,
    "openedLifeUnit" TEXT COLLATE "C",
    "costMinor" BIGINT,
    "currency" TEXT COLLATE "C",
    "receivedOn" TEXT COLLATE "C" NOT NULL,

    CONSTRAINT "Container_pkey" PRIMARY KEY ("stockId")
);

-- CreateTable
CREATE TABLE "Piece" (
    "stockId" INTEGER NOT NULL,
    "form" TEXT COLLATE "C" NOT NULL,
    "species" TEXT COLLATE "C" NOT NULL,
    "lengthNm" BIGINT NOT NULL,
    "widthStartNm" BIGINT NOT NULL,
    "widthMiddleNm" BIGINT NOT NULL,
    "widthEndNm" BIGINT NOT NULL,
    "thicknessNm" BIGINT NOT NULL,
    "flags" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "flitch" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "flitchNumber" INTEGER,
    "costMinor" BIGINT,
    "currency" TEXT COLLATE "C",
    "receivedOn" TEXT COLLATE "C" NOT NULL,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "origin" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "sawn" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "sapwoodNm" BIGINT,
    "cupNm" BIGINT,
    "bowNm" BIGINT,
    "twistNm" BIGINT,
    "quarters" INTEGER,
    "surfacing" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "grain" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "faceA" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "faceB" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "sellerName" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "sellerLengthNm" BIGINT,
    "sellerWidthNm" BIGINT,
    "sellerThicknessNm" BIGINT,
    "sellerVolumeMm3" BIGINT,
    "sellerMassMg" BIGINT,
    "sellerMcTenths" INTEGER,
    "shapeId" INTEGER,
    "cutId" INTEGER,
    "pairedWithId" INTEGER,

    CONSTRAINT "Piece_pkey" PRIMARY KEY ("stockId")
);

-- CreateTable
CREATE TABLE "Shape" (
    "id" SERIAL NOT NULL,
    "pieceId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "source" TEXT COLLATE "C" NOT NULL,
    "chalkLine" TEXT COLLATE "C",
    "outline" TEXT COLLATE "C" NOT NULL,
    "photoId" INTEGER,
    "photoPlace" TEXT COLLATE "C",
    "photoErrorUm" INTEGER,

    CONSTRAINT "Shape_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Mark" (
    "id" SERIAL NOT NULL,
    "pieceId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "place" TEXT COLLATE "C" NOT NULL,
    "face" TEXT COLLATE "C" NOT NULL,
    "depthNm" BIGINT,
    "decision" TEXT COLLATE "C" NOT NULL,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "removedById" INTEGER,

    CONSTRAINT "Mark_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Cut" (
    "entryId" INTEGER NOT NULL,
    "pieceId" INTEGER NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "lines" TEXT COLLATE "C" NOT NULL DEFAULT '[]',
    "kerfNm" BIGINT NOT NULL DEFAULT 0,
    "scrap" TEXT COLLATE "C" NOT NULL DEFAULT '[]',

    CONSTRAINT "Cut_pkey" PRIMARY KEY ("entryId")
);

-- CreateTable
CREATE TABLE "PackBoard" (
    "id" SERIAL NOT NULL,
    "pieceId" INTEGER NOT NULL,
    "lengthNm" BIGINT NOT NULL,
    "widthNm" BIGINT NOT NULL,
    "takenById" INTEGER,

    CONSTRAINT "PackBoard_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Reading" (
    "id" SERIAL NOT NULL,
    "pieceId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "takenOn" TEXT COLLATE "C" NOT NULL,
    "mcTenths" INTEGER NOT NULL,
    "meter" TEXT COLLATE "C" NOT NULL,
    "spot" TEXT COLLATE "C" NOT NULL,
    "meterKind" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "depthNm" BIGINT,
    "alongNm" BIGINT,
    "acrossNm" BIGINT,
    "speciesSetting" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "woodTenthsC" INTEGER,
    "correctedTenths" INTEGER,
    "inheritedFromId" INTEGER,

    CONSTRAINT "Reading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RoomLog" (
    "id" SERIAL NOT NULL,
    "placeId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "takenOn" TEXT COLLATE "C" NOT NULL,
    "tenthsC" INTEGER NOT NULL,
    "humidityTenths" INTEGER NOT NULL,

    CONSTRAINT "RoomLog_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RoomSeason" (
    "id" SERIAL NOT NULL,
    "placeId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,
    "fromMonth" INTEGER NOT NULL,
    "tenthsC" INTEGER NOT NULL,
    "humidityTenths" INTEGER NOT NULL,
    "removedById" INTEGER,

    CONSTRAINT "RoomSeason_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Photo" (
    "id" SERIAL NOT NULL,
    "stockId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "file" TEXT COLLATE "C" NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "bytes" INTEGER NOT NULL,
    "caption" TEXT COLLATE "C" NOT NULL DEFAULT '',

    CONSTRAINT "Photo_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Inspection" (
    "id" SERIAL NOT NULL,
    "lotId" INTEGER NOT NULL,
    "containerId" INTEGER,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "madeOn" TEXT COLLATE "C" NOT NULL,
    "passed" BOOLEAN NOT NULL,
    "validUntil" TEXT COLLATE "C",
    "method" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "photoId" INTEGER,
    "pairLotId" INTEGER,
    "massMg" BIGINT,
    "roomTenthsC" INTEGER,
    "minutes" INTEGER,
    "result" TEXT COLLATE "C" NOT NULL DEFAULT '',

    CONSTRAINT "Inspection_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Code" (
    "id" SERIAL NOT NULL,
    "value" TEXT COLLATE "C" NOT NULL,
    "productId" INTEGER,
    "stockId" INTEGER,
    "placeId" INTEGER,
    "packageSize" BIGINT,
    "entryId" INTEGER NOT NULL,

    CONSTRAINT "Code_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Job" (
    "id" SERIAL NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,
    "purpose" TEXT COLLATE "C" NOT NULL,
    "client" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "dayOfUse" TEXT COLLATE "C" NOT NULL,
    "state" TEXT COLLATE "C" NOT NULL DEFAULT 'open',
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "stage" TEXT COLLATE "C" NOT NULL DEFAULT 'agreed',
    "dueOn" TEXT COLLATE "C",
    "contact" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Job_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Entry" (
    "id" INTEGER NOT NULL,
    "key" TEXT COLLATE "C" NOT NULL,
    "request" TEXT COLLATE "C" NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "happenedAt" TIMESTAMP(3) NOT NULL,
    "writtenAt" TIMESTAMP(3) NOT NULL,
    "who" TEXT COLLATE "C" NOT NULL,
    "device" TEXT COLLATE "C" NOT NULL,
    "why" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "reference" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "jobId" INTEGER,
    "productId" INTEGER,
    "placeId" INTEGER,
    "stockId" INTEGER,
    "answer" TEXT COLLATE "C" NOT NULL,
    "verdict" TEXT COLLATE "C",
    "verdictJson" TEXT COLLATE "C",
    "overrideInspectionId" INTEGER,
    "reversesId" INTEGER,

    CONSTRAINT "Entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "EntryAlso" (
    "stockId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,

    CONSTRAINT "EntryAlso_pkey" PRIMARY KEY ("stockId","entryId")
);

-- CreateTable
CREATE TABLE "Movement" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "key" TEXT COLLATE "C" NOT NULL,
    "stockId" INTEGER NOT NULL,
    "quantityDelta" BIGINT NOT NULL DEFAULT 0,
    "placeFromId" INTEGER,
    "placeToId" INTEGER,
    "conditionFrom" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "conditionTo" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "holdFrom" TEXT COLLATE "C" NOT NULL DEFAULT 'free',
    "holdTo" TEXT COLLATE "C" NOT NULL DEFAULT 'free',
    "jobFromId" INTEGER,
    "jobToId" INTEGER,
    "openedFrom" TEXT COLLATE "C",
    "openedTo" TEXT COLLATE "C",
    "reversesId" INTEGER,

    CONSTRAINT "Movement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SearchWord" (
    "id" SERIAL NOT NULL,
    "word" TEXT COLLATE "C" NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "refId" INTEGER NOT NULL,

    CONSTRAINT "SearchWord_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "JobPart" (
    "id" SERIAL NOT NULL,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,
    "count" INTEGER NOT NULL DEFAULT 1,
    "shape" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "lengthNm" BIGINT,
    "widthNm" BIGINT,
    "thicknessNm" BIGINT,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "removedById" INTEGER,

    CONSTRAINT "JobPart_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Need" (
    "id" SERIAL NOT NULL,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "partId" INTEGER,
    "stepId" INTEGER,
    "liftId" INTEGER,
    "kind" TEXT COLLATE "C" NOT NULL,
    "species" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "form" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "lengthNm" BIGINT,
    "widthNm" BIGINT,
    "thicknessNm" BIGINT,
    "productId" INTEGER,
    "systemId" INTEGER,
    "resinPart" TEXT COLLATE "C",
    "unit" TEXT COLLATE "C" NOT NULL,
    "amount" BIGINT NOT NULL,
    "surface" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "removedById" INTEGER,

    CONSTRAINT "Need_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Step" (
    "id" SERIAL NOT NULL,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,
    "day" TEXT COLLATE "C" NOT NULL,
    "sort" INTEGER NOT NULL DEFAULT 0,
    "pourId" INTEGER,
    "productId" INTEGER,
    "coatNr" INTEGER,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "doneOn" TEXT COLLATE "C",
    "doneById" INTEGER,
    "removedById" INTEGER,

    CONSTRAINT "Step_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ClosedDay" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "fromDay" TEXT COLLATE "C" NOT NULL,
    "toDay" TEXT COLLATE "C" NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "removedById" INTEGER,

    CONSTRAINT "ClosedDay_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PromiseLine" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "jobId" INTEGER NOT NULL,
    "stockId" INTEGER NOT NULL,
    "needId" INTEGER,
    "delta" BIGINT NOT NULL,
    "reversesId" INTEGER,

    CONSTRAINT "PromiseLine_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Promised" (
    "jobId" INTEGER NOT NULL,
    "stockId" INTEGER NOT NULL,
    "amount" BIGINT NOT NULL,

    CONSTRAINT "Promised_pkey" PRIMARY KEY ("jobId","stockId")
);

-- CreateTable
CREATE TABLE "Arriving" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "productId" INTEGER,
    "words" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "amount" BIGINT NOT NULL,
    "dueOn" TEXT COLLATE "C" NOT NULL,
    "supplier" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "costMinor" BIGINT,
    "currency" TEXT COLLATE "C",
    "closedById" INTEGER,

    CONSTRAINT "Arriving_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Sheet" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "systemId" INTEGER,
    "productId" INTEGER,
    "facts" TEXT COLLATE "C" NOT NULL,
    "file" TEXT COLLATE "C",
    "fileName" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "bytes" INTEGER,

    CONSTRAINT "Sheet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Pour" (
    "id" SERIAL NOT NULL,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "partId" INTEGER,
    "systemId" INTEGER NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,
    "plan" TEXT COLLATE "C" NOT NULL,
    "removedById" INTEGER,

    CONSTRAINT "Pour_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Lift" (
    "id" SERIAL NOT NULL,
    "pourId" INTEGER NOT NULL,
    "nr" INTEGER NOT NULL,
    "stepId" INTEGER,
    "depthNm" BIGINT NOT NULL,
    "volumeUl" BIGINT NOT NULL,
    "batches" TEXT COLLATE "C" NOT NULL,
    "pouredById" INTEGER,
    "pouredOn" TEXT COLLATE "C",
    "roomTenthsC" INTEGER,
    "humidityTenths" INTEGER,
    "photoId" INTEGER,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',

    CONSTRAINT "Lift_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Weighed" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "liftId" INTEGER NOT NULL,
    "batch" INTEGER NOT NULL,
    "part" TEXT COLLATE "C" NOT NULL,
    "stockId" INTEGER NOT NULL,
    "massMg" BIGINT NOT NULL,
    "beforeMg" BIGINT,
    "afterMg" BIGINT,

    CONSTRAINT "Weighed_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Fault" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "foundOn" TEXT COLLATE "C" NOT NULL,
    "jobId" INTEGER,
    "pourId" INTEGER,
    "liftId" INTEGER,
    "stockId" INTEGER,
    "place" TEXT COLLATE "C",
    "depthNm" BIGINT,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "photoId" INTEGER,
    "settledById" INTEGER,

    CONSTRAINT "Fault_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Sample" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "name" TEXT COLLATE "C" NOT NULL,
    "liftId" INTEGER,
    "lotAId" INTEGER,
    "lotBId" INTEGER,
    "placeId" INTEGER,
    "madeOn" TEXT COLLATE "C" NOT NULL,
    "lookOn" TEXT COLLATE "C",
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "goneById" INTEGER,

    CONSTRAINT "Sample_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SampleLook" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "sampleId" INTEGER NOT NULL,
    "lookedOn" TEXT COLLATE "C" NOT NULL,
    "result" TEXT COLLATE "C" NOT NULL,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "photoId" INTEGER,

    CONSTRAINT "SampleLook_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Treatment" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "stockId" INTEGER NOT NULL,
    "kind" TEXT COLLATE "C" NOT NULL,
    "doneOn" TEXT COLLATE "C" NOT NULL,
    "tenthsC" INTEGER,
    "minutes" INTEGER,
    "note" TEXT COLLATE "C" NOT NULL DEFAULT '',

    CONSTRAINT "Treatment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Stocktake" (
    "id" SERIAL NOT NULL,
    "entryId" INTEGER NOT NULL,
    "placeId" INTEGER NOT NULL,
    "closedById" INTEGER,
    "posted" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "Stocktake_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "StocktakeLine" (
    "id" SERIAL NOT NULL,
    "stocktakeId" INTEGER NOT NULL,
    "stockId" INTEGER,
    "code" TEXT COLLATE "C" NOT NULL DEFAULT '',
    "seenAt" TIMESTAMP(3) NOT NULL,
    "who" TEXT COLLATE "C" NOT NULL,
    "grossMg" BIGINT,
    "counted" BIGINT,

    CONSTRAINT "StocktakeLine_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Place_label_key" ON "Place"("label");

-- CreateIndex
CREATE INDEX "Place_parentId_idx" ON "Place"("parentId");

-- CreateIndex
CREATE UNIQUE INDEX "ResinSystem_name_key" ON "ResinSystem"("name");

-- CreateIndex
CREATE INDEX "Product_name_idx" ON "Product"("name");

-- CreateIndex
CREATE INDEX "Product_systemId_idx" ON "Product"("systemId");

-- CreateIndex
CREATE UNIQUE INDEX "Stock_label_key" ON "Stock"("label");

-- CreateIndex
CREATE INDEX "Stock_placeId_kind_quantity_idx" ON "Stock"("placeId", "kind", "quantity");

-- CreateIndex
CREATE INDEX "Stock_ownerJobId_idx" ON "Stock"("ownerJobId");

-- CreateIndex
CREATE INDEX "Stock_hold_idx" ON "Stock"("hold");

-- CreateIndex
CREATE INDEX "Stock_condition_idx" ON "Stock"("condition");

-- CreateIndex
CREATE UNIQUE INDEX "Lot_productId_code_key" ON "Lot"("productId", "code");

-- CreateIndex
CREATE INDEX "Container_lotId_idx" ON "Container"("lotId");

-- CreateIndex
CREATE INDEX "Container_productId_idx" ON "Container"("productId");

-- CreateIndex
CREATE UNIQUE INDEX "Piece_shapeId_key" ON "Piece"("shapeId");

-- CreateIndex
CREATE UNIQUE INDEX "Piece_pairedWithId_key" ON "Piece"("pairedWithId");

-- CreateIndex
CREATE INDEX "Piece_form_species_idx" ON "Piece"("form", "species");

-- CreateIndex
CREATE INDEX "Piece_flitch_idx" ON "Piece"("flitch");

-- CreateIndex
CREATE INDEX "Piece_cutId_idx" ON "Piece"("cutId");

-- CreateIndex
CREATE INDEX "Shape_pieceId_idx" ON "Shape"("pieceId");

-- CreateIndex
CREATE INDEX "Mark_pieceId_idx" ON "Mark"("pieceId");

-- CreateIndex
CREATE INDEX "Cut_pieceId_idx" ON "Cut"("pieceId");

-- CreateIndex
CREATE INDEX "PackBoard_pieceId_idx" ON "PackBoard"("pieceId");

-- CreateIndex
CREATE INDEX "PackBoard_takenById_idx" ON "PackBoard"("takenById");

-- CreateIndex
CREATE INDEX "Reading_pieceId_takenOn_idx" ON "Reading"("pieceId", "takenOn");

-- CreateIndex
CREATE INDEX "RoomLog_placeId_takenOn_idx" ON "RoomLog"("placeId", "takenOn");

-- CreateIndex
CREATE INDEX "RoomSeason_placeId_idx" ON "RoomSeason"("placeId");

-- CreateIndex
CREATE UNIQUE INDEX "Photo_file_key" ON "Photo"("file");

-- CreateIndex
CREATE INDEX "Photo_stockId_idx" ON "Photo"("stockId");

-- CreateIndex
CREATE INDEX "Inspection_lotId_idx" ON "Inspection"("lotId");

-- CreateIndex
CREATE INDEX "Inspection_containerId_idx" ON "Inspection"("containerId");

-- CreateIndex
CREATE INDEX "Inspection_pairLotId_idx" ON "Inspection"("pairLotId");

-- CreateIndex
CREATE UNIQUE INDEX "Code_value_key" ON "Code"("value");

-- CreateIndex
CREATE INDEX "Code_productId_idx" ON "Code"("productId");

-- CreateIndex
CREATE INDEX "Job_state_dayOfUse_idx" ON "Job"("state", "dayOfUse");

-- CreateIndex
CREATE UNIQUE INDEX "Entry_key_key" ON "Entry"("key");

-- CreateIndex
CREATE UNIQUE INDEX "Entry_reversesId_key" ON "Entry"("reversesId");

-- CreateIndex
CREATE INDEX "Entry_jobId_idx" ON "Entry"("jobId");

-- CreateIndex
CREATE INDEX "Entry_productId_idx" ON "Entry"("productId");

-- CreateIndex
CREATE INDEX "Entry_placeId_idx" ON "Entry"("placeId");

-- CreateIndex
CREATE INDEX "Entry_stockId_idx" ON "Entry"("stockId");

-- CreateIndex
CREATE INDEX "EntryAlso_entryId_idx" ON "EntryAlso"("entryId");

-- CreateIndex
CREATE UNIQUE INDEX "Movement_key_key" ON "Movement"("key");

-- CreateIndex
CREATE UNIQUE INDEX "Movement_reversesId_key" ON "Movement"("reversesId");

-- CreateIndex
CREATE INDEX "Movement_stockId_id_idx" ON "Movement"("stockId", "id");

-- CreateIndex
CREATE INDEX "Movement_stockId_entryId_idx" ON "Movement"("stockId", "entryId");

-- CreateIndex
CREATE INDEX "Movement_entryId_idx" ON "Movement"("entryId");

-- CreateIndex
CREATE INDEX "Movement_placeToId_entryId_placeFromId_idx" ON "Movement"("placeToId", "entryId", "placeFromId");

-- CreateIndex
CREATE INDEX "Movement_placeFromId_entryId_placeToId_idx" ON "Movement"("placeFromId", "entryId", "placeToId");

-- CreateIndex
CREATE INDEX "SearchWord_kind_word_refId_idx" ON "SearchWord"("kind", "word", "refId");

-- CreateIndex
CREATE INDEX "SearchWord_kind_refId_word_idx" ON "SearchWord"("kind", "refId", "word");

-- CreateIndex
CREATE INDEX "JobPart_jobId_idx" ON "JobPart"("jobId");

-- CreateIndex
CREATE INDEX "Need_jobId_idx" ON "Need"("jobId");

-- CreateIndex
CREATE INDEX "Need_productId_idx" ON "Need"("productId");

-- CreateIndex
CREATE INDEX "Need_systemId_idx" ON "Need"("systemId");

-- CreateIndex
CREATE INDEX "Need_stepId_idx" ON "Need"("stepId");

-- CreateIndex
CREATE INDEX "Need_liftId_idx" ON "Need"("liftId");

-- CreateIndex
CREATE INDEX "Step_jobId_day_idx" ON "Step"("jobId", "day");

-- CreateIndex
CREATE INDEX "Step_pourId_idx" ON "Step"("pourId");

-- CreateIndex
CREATE INDEX "Step_day_idx" ON "Step"("day");

-- CreateIndex
CREATE INDEX "ClosedDay_toDay_idx" ON "ClosedDay"("toDay");

-- CreateIndex
CREATE UNIQUE INDEX "PromiseLine_reversesId_key" ON "PromiseLine"("reversesId");

-- CreateIndex
CREATE INDEX "PromiseLine_entryId_idx" ON "PromiseLine"("entryId");

-- CreateIndex
CREATE INDEX "PromiseLine_jobId_idx" ON "PromiseLine"("jobId");

-- CreateIndex
CREATE INDEX "PromiseLine_stockId_idx" ON "PromiseLine"("stockId");

-- CreateIndex
CREATE INDEX "PromiseLine_needId_idx" ON "PromiseLine"("needId");

-- CreateIndex
CREATE INDEX "Promised_stockId_idx" ON "Promised"("stockId");

-- CreateIndex
CREATE INDEX "Arriving_productId_idx" ON "Arriving"("productId");

-- CreateIndex
CREATE UNIQUE INDEX "Sheet_file_key" ON "Sheet"("file");

-- CreateIndex
CREATE INDEX "Sheet_systemId_idx" ON "Sheet"("systemId");

-- CreateIndex
CREATE INDEX "Sheet_productId_idx" ON "Sheet"("productId");

-- CreateIndex
CREATE INDEX "Pour_jobId_idx" ON "Pour"("jobId");

-- CreateIndex
CREATE INDEX "Pour_systemId_idx" ON "Pour"("systemId");

-- CreateIndex
CREATE UNIQUE INDEX "Lift_stepId_key" ON "Lift"("stepId");

-- CreateIndex
CREATE INDEX "Lift_pouredById_idx" ON "Lift"("pouredById");

-- CreateIndex
CREATE UNIQUE INDEX "Lift_pourId_nr_key" ON "Lift"("pourId", "nr");

-- CreateIndex
CREATE INDEX "Weighed_liftId_batch_part_idx" ON "Weighed"("liftId", "batch", "part");

-- CreateIndex
CREATE INDEX "Weighed_stockId_idx" ON "Weighed"("stockId");

-- CreateIndex
CREATE INDEX "Weighed_entryId_idx" ON "Weighed"("entryId");

-- CreateIndex
CREATE INDEX "Fault_jobId_idx" ON "Fault"("jobId");

-- CreateIndex
CREATE INDEX "Fault_stockId_idx" ON "Fault"("stockId");

-- CreateIndex
CREATE INDEX "Fault_liftId_idx" ON "Fault"("liftId");

-- CreateIndex
CREATE INDEX "Sample_liftId_idx" ON "Sample"("liftId");

-- CreateIndex
CREATE INDEX "Sample_lotAId_idx" ON "Sample"("lotAId");

-- CreateIndex
CREATE INDEX "Sample_lotBId_idx" ON "Sample"("lotBId");

-- CreateIndex
CREATE INDEX "Sample_lookOn_idx" ON "Sample"("lookOn");

-- CreateIndex
CREATE INDEX "SampleLook_sampleId_idx" ON "SampleLook"("sampleId");

-- CreateIndex
CREATE INDEX "Treatment_stockId_idx" ON "Treatment"("stockId");

-- CreateIndex
CREATE INDEX "Stocktake_placeId_idx" ON "Stocktake"("placeId");

-- CreateIndex
CREATE INDEX "StocktakeLine_stockId_idx" ON "StocktakeLine"("stockId");

-- CreateIndex
CREATE UNIQUE INDEX "StocktakeLine_stocktakeId_stockId_code_key" ON "StocktakeLine"("stocktakeId", "stockId", "code");

-- AddForeignKey
ALTER TABLE "Place" ADD CONSTRAINT "Place_parentId_fkey" FOREIGN KEY ("parentId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Product" ADD CONSTRAINT "Product_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Stock" ADD CONSTRAINT "Stock_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Stock" ADD CONSTRAINT "Stock_ownerJobId_fkey" FOREIGN KEY ("ownerJobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Container" ADD CONSTRAINT "Container_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Container" ADD CONSTRAINT "Container_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Container" ADD CONSTRAINT "Container_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Piece" ADD CONSTRAINT "Piece_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Piece" ADD CONSTRAINT "Piece_shapeId_fkey" FOREIGN KEY ("shapeId") REFERENCES "Shape"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Piece" ADD CONSTRAINT "Piece_cutId_fkey" FOREIGN KEY ("cutId") REFERENCES "Cut"("entryId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Piece" ADD CONSTRAINT "Piece_pairedWithId_fkey" FOREIGN KEY ("pairedWithId") REFERENCES "Piece"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Shape" ADD CONSTRAINT "Shape_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Shape" ADD CONSTRAINT "Shape_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Shape" ADD CONSTRAINT "Shape_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Mark" ADD CONSTRAINT "Mark_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Mark" ADD CONSTRAINT "Mark_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Mark" ADD CONSTRAINT "Mark_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Cut" ADD CONSTRAINT "Cut_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Cut" ADD CONSTRAINT "Cut_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PackBoard" ADD CONSTRAINT "PackBoard_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PackBoard" ADD CONSTRAINT "PackBoard_takenById_fkey" FOREIGN KEY ("takenById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_inheritedFromId_fkey" FOREIGN KEY ("inheritedFromId") REFERENCES "Reading"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RoomLog" ADD CONSTRAINT "RoomLog_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RoomLog" ADD CONSTRAINT "RoomLog_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RoomSeason" ADD CONSTRAINT "RoomSeason_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RoomSeason" ADD CONSTRAINT "RoomSeason_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RoomSeason" ADD CONSTRAINT "RoomSeason_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_pairLotId_fkey" FOREIGN KEY ("pairLotId") REFERENCES "Lot"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_containerId_fkey" FOREIGN KEY ("containerId") REFERENCES "Container"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Code" ADD CONSTRAINT "Code_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Code" ADD CONSTRAINT "Code_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Code" ADD CONSTRAINT "Code_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Code" ADD CONSTRAINT "Code_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Entry" ADD CONSTRAINT "Entry_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Entry" ADD CONSTRAINT "Entry_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Entry" ADD CONSTRAINT "Entry_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Entry" ADD CONSTRAINT "Entry_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Entry" ADD CONSTRAINT "Entry_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Entry" ADD CONSTRAINT "Entry_overrideInspectionId_fkey" FOREIGN KEY ("overrideInspectionId") REFERENCES "Inspection"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EntryAlso" ADD CONSTRAINT "EntryAlso_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "EntryAlso" ADD CONSTRAINT "EntryAlso_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_placeFromId_fkey" FOREIGN KEY ("placeFromId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_placeToId_fkey" FOREIGN KEY ("placeToId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_jobFromId_fkey" FOREIGN KEY ("jobFromId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_jobToId_fkey" FOREIGN KEY ("jobToId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "Movement"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "JobPart" ADD CONSTRAINT "JobPart_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "JobPart" ADD CONSTRAINT "JobPart_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "JobPart" ADD CONSTRAINT "JobPart_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_partId_fkey" FOREIGN KEY ("partId") REFERENCES "JobPart"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_stepId_fkey" FOREIGN KEY ("stepId") REFERENCES "Step"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Need" ADD CONSTRAINT "Need_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Step" ADD CONSTRAINT "Step_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Step" ADD CONSTRAINT "Step_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Step" ADD CONSTRAINT "Step_pourId_fkey" FOREIGN KEY ("pourId") REFERENCES "Pour"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Step" ADD CONSTRAINT "Step_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Step" ADD CONSTRAINT "Step_doneById_fkey" FOREIGN KEY ("doneById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Step" ADD CONSTRAINT "Step_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ClosedDay" ADD CONSTRAINT "ClosedDay_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ClosedDay" ADD CONSTRAINT "ClosedDay_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PromiseLine" ADD CONSTRAINT "PromiseLine_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PromiseLine" ADD CONSTRAINT "PromiseLine_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PromiseLine" ADD CONSTRAINT "PromiseLine_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PromiseLine" ADD CONSTRAINT "PromiseLine_needId_fkey" FOREIGN KEY ("needId") REFERENCES "Need"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PromiseLine" ADD CONSTRAINT "PromiseLine_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "PromiseLine"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Promised" ADD CONSTRAINT "Promised_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Promised" ADD CONSTRAINT "Promised_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Arriving" ADD CONSTRAINT "Arriving_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Arriving" ADD CONSTRAINT "Arriving_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Arriving" ADD CONSTRAINT "Arriving_closedById_fkey" FOREIGN KEY ("closedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sheet" ADD CONSTRAINT "Sheet_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sheet" ADD CONSTRAINT "Sheet_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sheet" ADD CONSTRAINT "Sheet_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Pour" ADD CONSTRAINT "Pour_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Pour" ADD CONSTRAINT "Pour_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Pour" ADD CONSTRAINT "Pour_partId_fkey" FOREIGN KEY ("partId") REFERENCES "JobPart"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Pour" ADD CONSTRAINT "Pour_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Pour" ADD CONSTRAINT "Pour_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lift" ADD CONSTRAINT "Lift_pourId_fkey" FOREIGN KEY ("pourId") REFERENCES "Pour"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lift" ADD CONSTRAINT "Lift_stepId_fkey" FOREIGN KEY ("stepId") REFERENCES "Step"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lift" ADD CONSTRAINT "Lift_pouredById_fkey" FOREIGN KEY ("pouredById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lift" ADD CONSTRAINT "Lift_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Weighed" ADD CONSTRAINT "Weighed_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Weighed" ADD CONSTRAINT "Weighed_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Weighed" ADD CONSTRAINT "Weighed_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Fault" ADD CONSTRAINT "Fault_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Fault" ADD CONSTRAINT "Fault_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Fault" ADD CONSTRAINT "Fault_pourId_fkey" FOREIGN KEY ("pourId") REFERENCES "Pour"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Fault" ADD CONSTRAINT "Fault_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Fault" ADD CONSTRAINT "Fault_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Fault" ADD CONSTRAINT "Fault_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Fault" ADD CONSTRAINT "Fault_settledById_fkey" FOREIGN KEY ("settledById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sample" ADD CONSTRAINT "Sample_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sample" ADD CONSTRAINT "Sample_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sample" ADD CONSTRAINT "Sample_lotAId_fkey" FOREIGN KEY ("lotAId") REFERENCES "Lot"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sample" ADD CONSTRAINT "Sample_lotBId_fkey" FOREIGN KEY ("lotBId") REFERENCES "Lot"("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sample" ADD CONSTRAINT "Sample_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Sample" ADD CONSTRAINT "Sample_goneById_fkey" FOREIGN KEY ("goneById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SampleLook" ADD CONSTRAINT "SampleLook_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SampleLook" ADD CONSTRAINT "SampleLook_sampleId_fkey" FOREIGN KEY ("sampleId") REFERENCES "Sample"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SampleLook" ADD CONSTRAINT "SampleLook_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Treatment" ADD CONSTRAINT "Treatment_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Treatment" ADD CONSTRAINT "Treatment_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Stocktake" ADD CONSTRAINT "Stocktake_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Stocktake" ADD CONSTRAINT "Stocktake_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Stocktake" ADD CONSTRAINT "Stocktake_closedById_fkey" FOREIGN KEY ("closedById") REFERENCES "Entry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StocktakeLine" ADD CONSTRAINT "StocktakeLine_stocktakeId_fkey" FOREIGN KEY ("stocktakeId") REFERENCES "Stocktake"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StocktakeLine" ADD CONSTRAINT "StocktakeLine_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma cannot say: the same checks as in a file, by the same names.
ALTER TABLE "Arriving"
    ADD CONSTRAINT "Arriving_amount" CHECK ("amount" > 0),
    ADD CONSTRAINT "Arriving_cost_has_currency" CHECK (("costMinor" IS NULL) = ("currency" IS NULL));
ALTER TABLE "Book"
    ADD CONSTRAINT "Book_one_row" CHECK ("id" = 1),
    ADD CONSTRAINT "Book_units" CHECK ("units" IN ('metric', 'imperial')),
    ADD CONSTRAINT "Book_date_order" CHECK ("dateOrder" IN ('day-first', 'month-first')),
    ADD CONSTRAINT "Book_house_sizes" CHECK ("houseLengthNm" >= 0 AND "houseWidthNm" >= 0 AND "kerfNm" >= 0);
ALTER TABLE "ClosedDay"
    ADD CONSTRAINT "ClosedDay_order" CHECK ("fromDay" <= "toDay");
ALTER TABLE "Code"
    ADD CONSTRAINT "Code_means_one_thing" CHECK ((CASE WHEN "productId" IS NULL THEN 0 ELSE 1 END) + (CASE WHEN "stockId" IS NULL THEN 0 ELSE 1 END) + (CASE WHEN "placeId" IS NULL THEN 0 ELSE 1 END) = 1);
ALTER TABLE "Container"
    ADD CONSTRAINT "Container_size" CHECK ("size" > 0),
    ADD CONSTRAINT "Container_tare" CHECK ("tareMg" IS NULL OR "tareMg" >= 0),
    ADD CONSTRAINT "Container_cost_has_currency" CHECK (("costMinor" IS NULL) = ("currency" IS NULL));
ALTER TABLE "Cut"
    ADD CONSTRAINT "Cut_kind" CHECK ("kind" IN ('cut', 'rip', 'resaw', 'break', 'unstrap', 'take')),
    ADD CONSTRAINT "Cut_kerf" CHECK ("kerfNm" >= 0);
ALTER TABLE "Fault"
    ADD CONSTRAINT "Fault_kind" CHECK ("kind" IN ('soft-spot', 'crack', 'bubbles', 'cloudy', 'delaminated', 'discoloured', 'other')),
    ADD CONSTRAINT "Fault_depth" CHECK ("depthNm" IS NULL OR "depthNm" >= 0);
ALTER TABLE "Job"
    ADD CONSTRAINT "Job_stage" CHECK ("stage" IN ('asked', 'quoted', 'agreed', 'making', 'curing', 'ready', 'delivered', 'dropped')),
    ADD CONSTRAINT "Job_purpose" CHECK ("purpose" IN ('client', 'own', 'test')),
    ADD CONSTRAINT "Job_state" CHECK ("state" IN ('open', 'done', 'dropped'));
ALTER TABLE "JobPart"
    ADD CONSTRAINT "JobPart_kind" CHECK ("kind" IN ('top', 'base', 'other')),
    ADD CONSTRAINT "JobPart_count" CHECK ("count" > 0);
ALTER TABLE "Lift"
    ADD CONSTRAINT "Lift_depth" CHECK ("depthNm" >= 0 AND "volumeUl" > 0 AND "nr" >= 0),
    ADD CONSTRAINT "Lift_poured" CHECK (("pouredById" IS NULL) = ("pouredOn" IS NULL));
ALTER TABLE "Mark"
    ADD CONSTRAINT "Mark_face" CHECK ("face" IN ('through', 'A', 'B')),
    ADD CONSTRAINT "Mark_decision" CHECK ("decision" IN ('keep-out', 'fill', 'leave')),
    ADD CONSTRAINT "Mark_depth" CHECK ("depthNm" IS NULL OR "depthNm" > 0);
ALTER TABLE "Need"
    ADD CONSTRAINT "Need_kind" CHECK ("kind" IN ('wood', 'material')),
    ADD CONSTRAINT "Need_unit" CHECK ("unit" IN ('mg', 'uL', 'piece')),
    ADD CONSTRAINT "Need_amount" CHECK ("amount" > 0),
    ADD CONSTRAINT "Need_part_of_a_system" CHECK (("systemId" IS NULL) = ("resinPart" IS NULL)),
    ADD CONSTRAINT "Need_of_something" CHECK ("kind" = 'wood' OR ("productId" IS NULL) <> ("systemId" IS NULL));
ALTER TABLE "PackBoard"
    ADD CONSTRAINT "PackBoard_sizes" CHECK ("lengthNm" > 0 AND "widthNm" > 0);
ALTER TABLE "Piece"
    ADD CONSTRAINT "Piece_form" CHECK ("form" IN ('slab', 'board', 'pack', 'sheet', 'offcut')),
    ADD CONSTRAINT "Piece_sizes" CHECK ("lengthNm" > 0 AND "thicknessNm" > 0 AND "widthStartNm" >= 0 AND "widthMiddleNm" >= 0 AND "widthEndNm" >= 0),
    ADD CONSTRAINT "Piece_cost_has_currency" CHECK (("costMinor" IS NULL) = ("currency" IS NULL)),
    ADD CONSTRAINT "Piece_sawn" CHECK ("sawn" IN ('', 'flat', 'quarter', 'mixed')),
    ADD CONSTRAINT "Piece_grain" CHECK ("grain" IN ('', 'length', 'width', 'none')),
    ADD CONSTRAINT "Piece_surfacing" CHECK ("surfacing" IN ('', 'rough', 'S2S', 'S4S')),
    ADD CONSTRAINT "Piece_pair_of_two" CHECK ("pairedWithId" IS NULL OR "pairedWithId" <> "stockId");
ALTER TABLE "Place"
    ADD CONSTRAINT "Place_not_in_itself" CHECK ("parentId" IS NULL OR "parentId" <> "id");
ALTER TABLE "Product"
    ADD CONSTRAINT "Product_unit" CHECK ("unit" IN ('mg', 'uL', 'piece')),
    ADD CONSTRAINT "Product_package_size" CHECK ("packageSize" > 0),
    ADD CONSTRAINT "Product_policy_kind" CHECK ("policyKind" IN ('fixed', 'inspectable', 'keeps')),
    ADD CONSTRAINT "Product_part" CHECK ("part" IS NULL OR ("part" IN ('A', 'B') AND "systemId" IS NOT NULL));
ALTER TABLE "PromiseLine"
    ADD CONSTRAINT "PromiseLine_changes" CHECK ("delta" <> 0);
ALTER TABLE "Promised"
    ADD CONSTRAINT "Promised_never_below_zero" CHECK ("amount" >= 0);
ALTER TABLE "Reading"
    ADD CONSTRAINT "Reading_possible" CHECK ("mcTenths" BETWEEN 0 AND 2500 AND ("correctedTenths" IS NULL OR "correctedTenths" BETWEEN 0 AND 2500)),
    ADD CONSTRAINT "Reading_meter_kind" CHECK ("meterKind" IN ('', 'pin', 'pinless')),
    ADD CONSTRAINT "Reading_depth" CHECK ("depthNm" IS NULL OR "depthNm" >= 0);
ALTER TABLE "RoomLog"
    ADD CONSTRAINT "RoomLog_possible" CHECK ("tenthsC" BETWEEN -500 AND 800 AND "humidityTenths" BETWEEN 0 AND 1000);
ALTER TABLE "RoomSeason"
    ADD CONSTRAINT "RoomSeason_possible" CHECK ("tenthsC" BETWEEN -500 AND 800 AND "humidityTenths" BETWEEN 0 AND 1000),
    ADD CONSTRAINT "RoomSeason_month" CHECK ("fromMonth" BETWEEN 1 AND 12);
ALTER TABLE "SampleLook"
    ADD CONSTRAINT "SampleLook_result" CHECK ("result" IN ('sound', 'soft', 'yellowed', 'cracked', 'other'));
ALTER TABLE "Shape"
    ADD CONSTRAINT "Shape_source" CHECK ("source" IN ('stations', 'photo', 'cut')),
    ADD CONSTRAINT "Shape_stations_kept" CHECK ("source" <> 'stations' OR "chalkLine" IS NOT NULL);
ALTER TABLE "Sheet"
    ADD CONSTRAINT "Sheet_of_one" CHECK (("systemId" IS NULL) <> ("productId" IS NULL));
ALTER TABLE "Step"
    ADD CONSTRAINT "Step_kind" CHECK ("kind" IN ('wood-dry', 'seal', 'lift', 'demould', 'flatten', 'coat', 'cure', 'assembly', 'delivery', 'other')),
    ADD CONSTRAINT "Step_done_by" CHECK (("doneOn" IS NULL) = ("doneById" IS NULL));
ALTER TABLE "Stock"
    ADD CONSTRAINT "Stock_kind" CHECK ("kind" IN ('lot', 'container', 'piece')),
    ADD CONSTRAINT "Stock_never_below_zero" CHECK ("quantity" >= 0),
    ADD CONSTRAINT "Stock_one_piece" CHECK ("kind" <> 'piece' OR "quantity" <= 1),
    ADD CONSTRAINT "Stock_lot_has_no_quantity" CHECK ("kind" <> 'lot' OR "quantity" = 0),
    ADD CONSTRAINT "Stock_hold" CHECK ("hold" IN ('free', 'on-hold', 'quarantine', 'recalled'));
ALTER TABLE "StocktakeLine"
    ADD CONSTRAINT "StocktakeLine_counts" CHECK (("grossMg" IS NULL OR "grossMg" >= 0) AND ("counted" IS NULL OR "counted" >= 0));
ALTER TABLE "Treatment"
    ADD CONSTRAINT "Treatment_kind" CHECK ("kind" IN ('warmed', 'stirred', 'strained', 'froze', 'overheated', 'crystals-seen'));
ALTER TABLE "Weighed"
    ADD CONSTRAINT "Weighed_part" CHECK ("part" IN ('A', 'B')),
    ADD CONSTRAINT "Weighed_mass" CHECK ("massMg" > 0);

-- The ledger is appended, never edited: the database itself refuses. A row that would take another's place
-- (INSERT ... ON CONFLICT DO UPDATE) fires the trigger of an update here.
CREATE FUNCTION "refuse_edit"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'ledger-is-append-only';
END $$;
CREATE TRIGGER "Entry_is_never_edited" BEFORE UPDATE ON "Entry" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Entry_is_never_deleted" BEFORE DELETE ON "Entry" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Entry_is_never_emptied" BEFORE TRUNCATE ON "Entry" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Movement_is_never_edited" BEFORE UPDATE ON "Movement" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Movement_is_never_deleted" BEFORE DELETE ON "Movement" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Movement_is_never_emptied" BEFORE TRUNCATE ON "Movement" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "PromiseLine_is_never_edited" BEFORE UPDATE ON "PromiseLine" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "PromiseLine_is_never_deleted" BEFORE DELETE ON "PromiseLine" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "PromiseLine_is_never_emptied" BEFORE TRUNCATE ON "PromiseLine" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Weighed_is_never_edited" BEFORE UPDATE ON "Weighed" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Weighed_is_never_deleted" BEFORE DELETE ON "Weighed" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Weighed_is_never_emptied" BEFORE TRUNCATE ON "Weighed" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "SampleLook_is_never_edited" BEFORE UPDATE ON "SampleLook" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "SampleLook_is_never_deleted" BEFORE DELETE ON "SampleLook" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "SampleLook_is_never_emptied" BEFORE TRUNCATE ON "SampleLook" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Treatment_is_never_edited" BEFORE UPDATE ON "Treatment" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Treatment_is_never_deleted" BEFORE DELETE ON "Treatment" FOR EACH ROW EXECUTE FUNCTION "refuse_edit"();
CREATE TRIGGER "Treatment_is_never_emptied" BEFORE TRUNCATE ON "Treatment" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_edit"();
