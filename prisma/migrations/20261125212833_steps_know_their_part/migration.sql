-- AlterTable
-- A column beside the others, empty: the table is not rebuilt, so its checks stay. What was planned before is the whole job's.
ALTER TABLE "Step" ADD COLUMN "partId" INTEGER CONSTRAINT "Step_partId_fkey" REFERENCES "JobPart" ("id") ON DELETE RESTRICT ON UPDATE CASCADE;
