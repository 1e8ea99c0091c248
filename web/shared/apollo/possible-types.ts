/** Which types stand behind each interface and union of the schema, for reading fragments from the cache. */
export const possibleTypes = {
  Node: ["Term", "Claim", "Source", "Examination"],
  ExamineResult: ["Examined", "Refused"],
  FieldSheetResult: ["FieldSheet", "Refused"],
  InspectionPlanResult: ["InspectionPlan", "Refused"],
  WeighResult: ["Weighed", "Refused"],
  ProposalResult: ["ProposalChanged", "Refused"],
  CommentResult: ["Comment", "Refused"],
  DisputeResult: ["Dispute", "Refused"],
  ChangeExaminationResult: ["ExaminationChanged", "Refused"],
  DatingsResult: ["Datings", "Refused"],
  NewsItem: ["ExaminationNews", "GraphNews", "ProposalNews"],
};
