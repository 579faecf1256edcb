// The settings of a desk: set by keys, kept, and what is a file or a folder chosen from the disk.
#include "client/stations/settings_page.h"

#include <QComboBox>
#include <QPushButton>
#include <QTimer>

#include "client/stations/all_stations.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class SettingsPageTest : public DeskTest {
 protected:
  // Opens the settings by their key, does `work` with them and presses Enter on "Set".
  void WithSettings(const std::function<void(SettingsPage&)>& work) {
    bool done = false;
    QTimer::singleShot(400, window.get(), [&] {
      auto* page = window->findChild<SettingsPage*>();
      ASSERT_NE(page, nullptr);
      work(*page);
      Picture("settings");
      if (const QString into = qEnvironmentVariable("HEATKEEP_PICTURES"); !into.isEmpty()) page->grab().save(into + "/settings_page.png");
      page->accept();
      done = true;
    });
    Press(Qt::Key_Comma, Qt::ControlModifier);
    EXPECT_TRUE(done);
  }
  template <typename Kind>
  Kind* Called(SettingsPage& page, const QString& words) {
    for (Kind* one : page.findChildren<Kind*>())
      if (one->accessibleName().startsWith(words)) return one;
    ADD_FAILURE() << "nothing is called " << words.toStdString();
    return nullptr;
  }
};

TEST_F(SettingsPageTest, WhatIsSetIsKeptForTheNextStart) {
  OpenDesk("all", AllStations);
  WithSettings([&](SettingsPage& page) {
    for (const auto& [words, row] : {std::pair("Lengths in", 1), {"Masses in", 1}, {"Look", 2}, {"Size of all", 4}, {"Language", 2}})
      Called<QComboBox>(page, words)->setCurrentIndex(row);
    Called<QLineEdit>(page, "Printer for sheets")->setText("laser");
    Called<QLineEdit>(page, "The scanner sends first")->setText("#");
  });
  const DeskSettings kept_now = DeskSettings::Load(*kept);
  EXPECT_EQ(kept_now.units.length, ReadingUnits::LengthAs::InchFraction);
  EXPECT_EQ(kept_now.units.mass, ReadingUnits::MassAs::Lb);
  EXPECT_EQ(kept_now.look, DeskSettings::Look::Dark);
  EXPECT_EQ(kept_now.scale, 175);
  EXPECT_EQ(kept_now.language, "de");
  EXPECT_EQ(kept_now.paper_printer, "laser");
  EXPECT_EQ(kept_now.scan_prefix, "#");
}

TEST_F(SettingsPageTest, FilesAndFoldersAreChosenFromTheDisk) {
  OpenDesk("all", AllStations);
  std::vector<bool> folders;
  WithSettings([&](SettingsPage& page) {
    page.choose_path = [&](const QString&, bool folder_wanted) {
      folders.push_back(folder_wanted);
      return folder_wanted ? folder.path() : folder.filePath("saw.queue");
    };
    for (const char* words : {"choose: Deeds kept", "choose: Folder for labels", "choose: Folder for sheets"})
      Called<QPushButton>(page, words)->click();
  });
  EXPECT_EQ(folders, (std::vector{false, true, true}));
  const DeskSettings kept_now = DeskSettings::Load(*kept);
  EXPECT_EQ(kept_now.queue_file, folder.filePath("saw.queue"));
  EXPECT_EQ(kept_now.label_folder, folder.path());
  EXPECT_EQ(kept_now.paper_folder, folder.path());
}

}  // namespace
}  // namespace heatkeep
