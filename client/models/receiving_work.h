// What is done at the gate: the lines of one delivery note read from the metal, the note booked as a whole, its labels, its photos, and
// every piece put away; straps cut. Until it is booked a note is only here: it is one deed, so a half of one is never in the book. A deed
// whose answer got lost is asked again with its own request number, after a restart of the desk, too (kept_deed.h).
#pragma once

#include <QObject>
#include <functional>

#include "client/models/book_link.h"
#include "client/models/delivery_line.h"
#include "client/models/desk_settings.h"
#include "client/models/kept_deed.h"

namespace heatkeep {

// The head of the note; typed once.
struct DeliveryNote {
  QString number, supplier, order;  // order: the purchase order; empty: not ordered here
};

struct ReadLine {
  TypedLine typed;
  JudgedLine judged;  // always with a body
};

// Pieces at the gate that are alike: one heat, size, condition, owner, state; a strapped bundle by itself.
struct GateGroup {
  AtGateRow first;
  std::vector<std::string> tags;
  Mass mass;
};

class ReceivingWork : public QObject {
  Q_OBJECT

 public:
  ReceivingWork(BookLink& link, const DeskSettings& settings, QObject* parent = nullptr);

  void Read();
  const DoorFacts& facts() const { return facts_; }
  const std::vector<GateGroup>& gate() const { return gate_; }
  bool busy() const { return deed_.busy(); }

  DeliveryNote note;
  const std::vector<ReadLine>& lines() const { return lines_; }
  // The line of an order to be read: grade, size, condition as ordered, the mill where this supplier only ever brought one mill's metal;
  // nothing counted, no heat. A second heat of the same line keeps what was said of the note.
  TypedLine Pick(const ExpectedRow& expected) const;
  JudgedLine Judge(const TypedLine& typed) const;
  // Why this line cannot be of this note; empty: it can.
  QString NotOfThisNote(const ExpectedRow& expected) const;
  bool AddLine(const TypedLine& typed);  // false: it cannot be booked yet; Judge says why
  void TakeOut(std::size_t line);
  // The whole note. Refused with words where something is missing.
  void Receive();

  // All or none of them; a whole strapped bundle as one.
  void PutAway(const std::vector<std::string>& tags, const std::string& place);
  // The strap is cut: from now on every bar is moved and counted by itself.
  void OpenBundle(const std::string& bundle);
  void AddPhoto(const std::string& tag, const QString& file, bool tell = true);

  // The papers this supplier owes; OwedPapers when they are here.
  void AskOwedPapers(const QString& supplier);

 signals:
  void Shown();
  void NoteBooked(const QStringList& tags, const QStringList& quarantined);  // a new note may begin
  // `fully`: nothing is to be heeded. `undo`: takes it back; empty: this login cannot.
  void Done(const QString& words, bool fully, const QString& undo_words, const std::function<void()>& undo);
  void Refused(const QString& words);
  void LabelsWanted(const QStringList& tags);
  void OwedPapers(const std::vector<OwedPapersRow>& rows);

 private:
  using Json = nlohmann::json;

  void Do(const AskedDeed& deed);
  void After(const AskedDeed& deed, const Json& answer, bool late);
  void Booked(const AskedDeed& deed, const Json& answer, bool late);
  void LaidAway(const AskedDeed& deed, bool late);
  void Reverse(const DeliveryNote& booked);
  std::int64_t CountedBefore(const TypedLine& typed) const;

  BookLink& link_;
  const DeskSettings& settings_;
  KeptDeed deed_;
  DoorFacts facts_;
  std::vector<GateGroup> gate_;
  std::vector<ReadLine> lines_;
};

}  // namespace heatkeep
