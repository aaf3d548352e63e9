-- AlterTable
-- What was planned before is the whole job's.
ALTER TABLE "Step" ADD COLUMN "partId" INTEGER;

-- AddForeignKey
ALTER TABLE "Step" ADD CONSTRAINT "Step_partId_fkey" FOREIGN KEY ("partId") REFERENCES "JobPart"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
