// The collation of the book: its formula and extent read as they are typed, its gatherings drawn,
// what was found leaf by leaf, and the leaves supplied. A set shows one volume at a time.
#pragma once

#include "app/form/record_form.h"
#include "app/form/record_list.h"
#include "app/pages/collation/finding_lists.h"
#include "app/pages/job_page.h"

class QComboBox;

namespace headcap::app {

class CopyWords;
class GatheringView;
class Label;
class LeafSheetSection;
class WalkSection;

class CollationPage : public JobPage {
    Q_OBJECT
public:
    explicit CollationPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    bool goTo(const core::RecordRef& ref) override;
    void enter() override;
    [[nodiscard]] WalkSection& walk() { return *m_walk; }
    [[nodiscard]] LeafSheetSection& leafSheet() { return *m_sheet; }
    bool print() override;

private:
    void buildVolumeChoice();
    void buildMakeUp();
    void buildWalk();
    void addTally(const QString& label, std::int64_t core::Collation::*member,
                  const QString& nought);
    void buildCollation();
    void buildFindings();
    void buildFacsimiles();
    void buildVolumeLists();
    void buildLeafSheet();
    void buildCopyWords();
    [[nodiscard]] BookOfVolume bookShown() const;
    void showVolumes();
    void showVolume();
    void showReading(const core::Collation& collation);
    void showGatherings();
    [[nodiscard]] std::optional<core::Id<core::Item>> volume() const;

    QComboBox* m_volumes;
    Label* m_formula;
    Label* m_tally;
    Label* m_remarks;
    GatheringView* m_gatherings;
    WalkSection* m_walk;
    RecordForm<core::Collation>* m_collation;
    FindingList* m_findings;
    CopyWords* m_copyWords;
    FacsimileList* m_facsimiles;
    PlateList* m_plates;
    TaskList* m_tasks;
    LeafSheetSection* m_sheet;
    core::LaidBook m_book; // of the volume shown
    std::optional<core::JobFile> m_file;
};

} // namespace headcap::app
